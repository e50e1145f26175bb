/** Hours of daylight, from the day and the latitude. */

/** The sun has risen when its upper edge is seen, bent by the air: so many degrees its middle is still below. */
const belowHorizon = 0.8333;

/**
 * Hours from sunrise to sunset.
 * The model of Forsythe and others ("CBM"), with the sun's upper edge and the bending by the air.
 * @param latitude degrees, north above zero, -90 to 90
 * @param dayOfYear 1 to 366
 * @returns hours, 0 in the polar night and 24 in the polar day
 * @valid within a few minutes below 60 degrees, on level ground
 * @throws RangeError beyond the poles
 * @source forsythe1995 equations 1 to 3
 * @example dayLength_h(40, 172) // 15.0159845462621
 */
export function dayLength_h(latitude: number, dayOfYear: number): number {
  if (!(-90 <= latitude && latitude <= 90)) throw new RangeError(`dayLength_h at ${latitude} degrees`);
  const theta = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.0086 * (dayOfYear - 186)));
  const phi = Math.asin(0.39795 * Math.cos(theta));
  const l = (latitude * Math.PI) / 180;
  const p = (belowHorizon * Math.PI) / 180;
  const cosine = (Math.sin(p) + Math.sin(l) * Math.sin(phi)) / (Math.cos(l) * Math.cos(phi));
  return 24 - (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)));
}
