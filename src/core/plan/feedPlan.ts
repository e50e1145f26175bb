/** Feed of the day in grams and spoonfuls, with the temperatures at which it holds. */
import { rationFrom_g, rationGrowOut_frac } from '../constants.ts';
import type { Note, SourceKey } from '../note.ts';
import { ration_g_d } from '../stocking/feed.ts';
import type { FishStock } from '../fish.ts';
import type { System } from '../system.ts';
import type { Figure, Table } from './figure.ts';
import { byHand, figure, lookup, noFigure, quantity, numberOf } from './write.ts';

/** Masses that the keeper's weighing table runs through. */
const weighings_g = [50, 100, 150, 200, 300, 400, 500, 750, 1000] as const;

/** A ration with its range, and who says so. */
type Ration = {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
};

/**
 * Ration, feed and spoonfuls of a day, and the temperatures at which they hold.
 * The low end of the published range: what a stranger may give without harm. The keeper's own ration goes before it.
 * @param system a checked system
 * @returns ration_frac, feed_g_d, feedSpoons and the temperatures; none without fish
 * @valid published for fish over 50 g in grow-out; lighter and ornamental fish only with the keeper's ration
 * @source fao589 section 7.2
 */
export function feedFigures(system: System): readonly Figure[] {
  const { fish } = system;
  if (fish === null || fish.present === 0) return [];
  const ration = rationFor(fish);
  const temperatures = temperatureFigures(fish);
  if (ration === null) {
    const why: Note = {
      code: fish.species.use === 'ornamental' ? 'rationSupplier' : 'rationTooSmallFish',
      level: 'caution',
      numbers: { massNow_g: fish.massNow_g, from_g: rationFrom_g.value },
      source: rationFrom_g.source,
    };
    return [noFigure('ration_frac', 'frac', why), noFigure('feed_g_d', 'g_d', why), ...temperatures];
  }
  const feed = feedFigure(fish, ration);
  return [rationFigure(ration), feed, ...spoonFigures(system, numberOf(feed)), ...temperatures];
}

/**
 * Feed for the fish present at other mean masses, for after a weighing.
 * @param system a checked system
 * @returns one table, or none where no published ration fits
 * @source fao589 section 7.2
 */
export function weighingTables(system: System): readonly Table[] {
  const { fish } = system;
  if (fish === null || fish.present === 0 || fish.species.use === 'ornamental') return [];
  const rows = weighings_g
    .filter((mass_g) => mass_g <= fish.massAdult_g)
    .map((mass_g) => [
      mass_g,
      ration_g_d(fish.present, mass_g, rationGrowOut_frac.low),
      ration_g_d(fish.present, mass_g, rationGrowOut_frac.high),
    ]);
  return [
    {
      key: 'feedByMass',
      columns: [
        { key: 'massNow', unit: 'g' },
        { key: 'feedLow', unit: 'g_d' },
        { key: 'feedHigh', unit: 'g_d' },
      ],
      rows,
    },
  ];
}

function rationFor(fish: FishStock): Ration | null {
  const own = fish.keeperRation_frac;
  if (own !== null) return { value: own, low: own, high: own, source: 'keeper' };
  if (fish.species.use === 'ornamental' || fish.massNow_g < rationFrom_g.value) return null;
  return { ...rationGrowOut_frac, value: rationGrowOut_frac.low };
}

function rationFigure(ration: Ration): Figure {
  const { low, high } = rationGrowOut_frac;
  const above: Note = {
    code: 'rationAbovePublished',
    level: 'caution',
    numbers: { ration_frac: ration.value, high_frac: high },
    source: rationGrowOut_frac.source,
  };
  const lowEnd: Note = {
    code: 'rationLowEnd',
    level: 'info',
    numbers: { low_frac: low, high_frac: high },
    source: rationGrowOut_frac.source,
  };
  const own: Note = {
    code: 'rationKeeper',
    level: 'info',
    numbers: { ration_frac: ration.value },
    source: 'keeper',
  };
  const isOwn = ration.source === 'keeper';
  return figure({
    key: 'ration_frac',
    value: ration.value,
    low: ration.low,
    high: ration.high,
    unit: 'frac',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [lookup(quantity('r', 'ration', ration.value, 'frac'), ration.source)],
    notes: isOwn ? (ration.value > high ? [own, above] : [own]) : [lowEnd],
  });
}

function feedFigure(fish: FishStock, ration: Ration): Figure {
  const value = ration_g_d(fish.present, fish.massNow_g, ration.value);
  return figure({
    key: 'feed_g_d',
    value,
    low: ration_g_d(fish.present, fish.massNow_g, ration.low),
    high: ration_g_d(fish.present, fish.massNow_g, ration.high),
    unit: 'g_d',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('f', 'feed', value, 'g_d'),
        'n × m × r',
        [
          quantity('n', 'fishPresent', fish.present, 'fish'),
          quantity('m', 'massNow', fish.massNow_g, 'g'),
          quantity('r', 'ration', ration.value, 'frac'),
        ],
        ration.source,
      ),
    ],
  });
}

function spoonFigures(system: System, feed_g: number): readonly Figure[] {
  if (system.spoon_g === null) return [];
  const value = feed_g / system.spoon_g;
  return [
    figure({
      key: 'feedSpoons',
      value,
      unit: 'spoons',
      safeSide: 'down',
      confidence: 'estimate',
      steps: [
        byHand(
          quantity('s', 'feedSpoons', value, 'spoons'),
          'f ÷ g',
          [quantity('f', 'feed', feed_g, 'g_d'), quantity('g', 'spoon', system.spoon_g, 'g')],
          'geometry',
        ),
      ],
    }),
  ];
}

function temperatureFigures(fish: FishStock): readonly Figure[] {
  const { species } = fish;
  const range = species.temperatureSource;
  const one = (key: string, value: number, safeSide: 'up' | 'down', source: SourceKey): Figure =>
    figure({
      key,
      value,
      unit: 'degC',
      safeSide,
      confidence: 'estimate',
      steps: [lookup(quantity('T', key.split('_')[0] ?? key, value, 'degC'), source)],
    });
  return [
    one('aliveFrom_degC', species.alive_degC.min, 'up', range),
    one('noFeedBelow_degC', species.noFeedBelow_degC, 'up', species.noFeedSource),
    one('goodFrom_degC', species.good_degC.min, 'up', range),
    one('goodTo_degC', species.good_degC.max, 'down', range),
    one('callAbove_degC', species.callAbove_degC, 'down', species.callAboveSource),
    one('aliveTo_degC', species.alive_degC.max, 'down', range),
  ];
}
