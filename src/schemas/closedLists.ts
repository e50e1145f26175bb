/** Lists that a file and a form choose from; by themselves, so that a page can show them before it can read a file. */

/**
 * How the water moves: `siphon` and `timer` flood and drain in turns; `constantFlood` stands at the lip of the
 * standpipe all the time; `inTank` is a basket of media that stands in the fish tank.
 */
export const bedModes = ['siphon', 'timer', 'constantFlood', 'inTank'] as const;

/** Monday first, as weeks are counted. */
export const workdays = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;
