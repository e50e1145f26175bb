/** What a container weighs when it is filled to the rim. */

/** A litre of water weighs a kilogram, near enough and not too light. */
const water_kg_L = 1;

/**
 * Weight of a bed that is flooded to its rim, as when its outlet is blocked.
 *
 * Weight = media × bulk density ÷ 1000 + (media × void fraction + room above the media) × 1 kg a litre.
 *
 * @param rim_L what the container holds to its rim, L, above 0
 * @param media_L media in it, L, 0 to `rim_L`
 * @param bulk_kg_m3 weight of a heap of the dry media, kg/m3, 0 or more
 * @param void_frac share of the heap that water fills, 0 to 1
 * @returns weight of media and water, kg; container, frame, plants and people come on top
 * @valid media that takes no water into its grains; where it does, take the weight of the soaked, drained heap
 * @throws RangeError where an argument is out of its range
 * @source dasGeotechnical, chapter 3, saturated unit weight
 * @example floodedBed_kg(300, 300, 1600, 0.4) // 600
 */
export function floodedBed_kg(rim_L: number, media_L: number, bulk_kg_m3: number, void_frac: number): number {
  if (!(0 < rim_L && 0 <= media_L && media_L <= rim_L)) {
    throw new RangeError(`floodedBed_kg(${rim_L} L, ${media_L} L)`);
  }
  if (!(0 <= bulk_kg_m3 && 0 <= void_frac && void_frac <= 1)) {
    throw new RangeError(`floodedBed_kg(${bulk_kg_m3} kg/m3, ${void_frac})`);
  }
  const water_L = media_L * void_frac + rim_L - media_L;
  return (media_L * bulk_kg_m3) / 1000 + water_L * water_kg_L;
}

/**
 * Load on the ground under a container.
 *
 * Load = weight ÷ footprint.
 *
 * @param weight_kg weight, kg, 0 or more
 * @param footprint_m2 area that it stands on, m2, above 0
 * @returns load, kg for each square metre
 * @valid a floor that carries all over; legs press far harder where they stand
 * @throws RangeError where an argument is out of its range
 * @source geometry
 * @example load_kg_m2(600, 1) // 600
 */
export function load_kg_m2(weight_kg: number, footprint_m2: number): number {
  if (!(0 <= weight_kg && 0 < footprint_m2)) {
    throw new RangeError(`load_kg_m2(${weight_kg} kg, ${footprint_m2} m2)`);
  }
  return weight_kg / footprint_m2;
}
