import { expect, test } from 'vitest';
import { changed, readWith, soundSystem } from './contentFolder.ts';

const system = (id: string, from: string, to: string) => ({ [`systems/${id}.yaml`]: changed(id, from, to) });

test('every bad file of one folder is told at once, each with file, line, column and what to do', async () => {
  const { content, problems, lines } = await readWith({
    'systems/sound.yaml': soundSystem,
    ...system(
      'absurd',
      'length_mm: 1000, width_mm: 1000, depth_mm: 800',
      'length_mm: 100000, width_mm: -5, depth_mm: 800',
    ),
    ...system('bed-too-high', 'mediaDepth_mm: 330', 'mediaDepth_mm: 400'),
    ...system('pump-too-high', 'intake_mm: 100', 'intake_mm: 600'),
    ...system('no-such-media', 'media: coarseGravel', 'media: coarsGravel'),
    ...system('no-such-fish', 'kind: nileTilapia', 'kind: tilapiaNile'),
    ...system('text-number', 'full_mm: 700', 'full_mm: 45 days'),
    ...system('thousands', 'full_mm: 700', 'full_mm: 1,200'),
    ...system('comma', 'full_mm: 700', 'full_mm: 712,5'),
    ...system('quoted', 'full_mm: 700', 'full_mm: "700"'),
    ...system('unknown-key', 'media: coarseGravel', 'medium: coarseGravel'),
    ...system('stray-key', 'flow_L_h: 900', 'flow_L_h: 900\n  colour: blue'),
    ...system('wrong-unit', 'waterLine_mm: 300', 'waterLine_cm: 30'),
    ...system('no-unit', 'waterLine_mm: 300', 'waterLine: 300'),
    'systems/one.yaml': soundSystem.replace('id: sound', 'id: twice'),
    'systems/private/two.yaml': soundSystem.replace('id: sound', 'id: twice'),
    'systems/large.yaml': new Uint8Array(10_000_000).fill(0x61),
    'systems/not-yaml.yaml': 'id: not-yaml\nname: [unfinished\nplace: "also\n',
    'systems/tabs.yaml': 'id: tabs\ntank:\n\tfull_mm: 700\n',
    'systems/twice-key.yaml': 'id: twice-key\nname: A\nname: B\n',
    'systems/empty.yaml': '# nothing yet\n',
    'systems/picture.jpg': 'x',
    'systems/latin.yaml': Uint8Array.from([...Buffer.from('id: latin\nname: Caf'), 0xe9, 0x0a]),
  });
  expect(lines).toMatchInlineSnapshot(`
    [
      "content/systems/absurd.yaml:4:39 tank.container.length_mm: got 100000, expected a number from 10 to 20000, in millimetres. Measure inside, from wall to wall, at the rim.",
      "content/systems/absurd.yaml:4:57 tank.container.width_mm: got -5, expected a number from 10 to 20000, in millimetres. Measure inside, from wall to wall, at the rim.",
      "content/systems/bed-too-high.yaml:11:20 beds[0].mediaDepth_mm: the media is 400 mm deep, but the container is only 360 mm deep. Measure both from the inside floor.",
      "content/systems/comma.yaml:5:12 tank.full_mm: got "712,5", expected a number from 10 to 20000, in millimetres. Write 712.5, with a point and not a comma.",
      "content/systems/empty.yaml:1:1: the file has nothing in it. Write it, or delete it.",
      "content/systems/large.yaml:1:1: the file has 10000000 bytes, but 2000000 are the most. Nothing of it was read. Write one system in a file, and no pictures.",
      "content/systems/latin.yaml:2:10: from here on the text is not UTF-8. Save the file again and choose UTF-8 as its encoding.",
      "content/systems/no-such-fish.yaml:18:9 fish.kind: got "tilapiaNile", but there is no such file. The files there are bluegill, channelCatfish, commonCarp, commonGoldfish, europeanPerch, guppy, jadePerch, koi, nileTilapia, rainbowTrout, silverPerch, tench, whiteCloudMinnow and zebraDanio.",
      "content/systems/no-such-media.yaml:10:12 beds[0].media: got "coarsGravel", but there is no such file. Did you mean "coarseGravel"? The files there are coarseGravel, crushedBrick, expandedClay, pumice and roundedGravel.",
      "content/systems/no-unit.yaml:7:5 beds[0].waterLine_mm: is missing. Expected a number from 10 to 330, in millimetres.",
      "content/systems/no-unit.yaml:12:5 beds[0].waterLine: "waterLine" does not say its unit, and millimetres are wanted. Write waterLine_mm in its place.",
      "content/systems/not-yaml.yaml:3:1: from here on the file cannot be read as YAML. The indentation does not fit the lines above; keys of one group begin in the same column. (The reader says: Flow sequence in block collection must be sufficiently indented and end with a ].)",
      "content/systems/not-yaml.yaml:4:1: from here on the file cannot be read as YAML. A bracket, brace, quotation mark or colon is missing. (The reader says: Missing closing "quote.)",
      "content/systems/one.yaml:1:5 id: got "twice", expected "one", the name of its file; rename one of the two.",
      "content/systems/picture.jpg:1:1: got "picture.jpg", expected a name that ends in .yaml.",
      "content/systems/private/two.yaml:1:5 id: got "twice", expected "two", the name of its file; rename one of the two.",
      "content/systems/private/two.yaml:1:5 id: the id "twice" is already that of content/systems/one.yaml. Give one of the two another id, and its file the same name.",
      "content/systems/pump-too-high.yaml:16:14 pump.intake_mm: the pump takes in water at 600 mm, but with all beds full the water can fall to 565 mm. Set the pump lower, or let the beds take less water.",
      "content/systems/quoted.yaml:5:12 tank.full_mm: got "700", expected a number from 10 to 20000, in millimetres. Leave the quotation marks out.",
      "content/systems/stray-key.yaml:16:3 pump.colour: the key "colour" is not known here. The keys here are flow_L_h, intake_mm, curve, power_W, pipe and timer.",
      "content/systems/tabs.yaml:3:1: from here on the file cannot be read as YAML. Lines are indented with spaces, never with tabs. (The reader says: Tabs are not allowed as indentation.)",
      "content/systems/text-number.yaml:5:12 tank.full_mm: got "45 days", expected a number from 10 to 20000, in millimetres. Leave the unit out; the key says it.",
      "content/systems/thousands.yaml:5:12 tank.full_mm: got "1,200", expected a number from 10 to 20000, in millimetres. Write 1200 or 1.200, without a comma.",
      "content/systems/twice-key.yaml:3:1: "name" stands twice in one group. Keep one of the two.",
      "content/systems/unknown-key.yaml:10:5 beds[0].medium: the key "medium" is not known here. Did you mean "media"? The keys here are name, container, count, mode, media, bucketTest, mediaDepth_mm, waterLine_mm, drained_mm, standpipeBore_mm, drainHole_mm and above_mm.",
      "content/systems/wrong-unit.yaml:7:5 beds[0].waterLine_mm: is missing. Expected a number from 10 to 330, in millimetres.",
      "content/systems/wrong-unit.yaml:12:5 beds[0].waterLine_cm: "waterLine_cm" is in centimetres, but millimetres are wanted. Write waterLine_mm: 300 in its place. Multiply centimetres by 10.",
    ]
  `);
  expect(content.systems.map((one) => one.id)).toEqual(['sound', 'twice', 'twice']);
  for (const { at } of problems) {
    expect(at?.line).toBeGreaterThan(0);
    expect(at?.column).toBeGreaterThan(0);
  }
});
