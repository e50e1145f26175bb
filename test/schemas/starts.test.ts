/** Climates, containers and pumps to start from: what is wrong with such a file is told with its place. */
import { expect, test } from 'vitest';
import { content } from '../demoSystems.ts';
import { readWith } from './contentFolder.ts';

const months = (count: number, degC: number): string =>
  `[${Array.from({ length: count }, () => degC).join(', ')}]`;

test('every bad file is told at once, with what to do', async () => {
  const { lines } = await readWith({
    'climates/shortYear.yaml': `name: A year of eleven months\nlatitude: 0\nlongitude: 0\nelevation_m: 5\nmin_degC: ${months(11, 5)}\nmax_degC: ${months(12, 9)}\nsource: wmoNormals1991\n`,
    'climates/upsideDown.yaml': `name: Nights warmer than days\nlatitude: 0\nlongitude: 0\nelevation_m: 5\nmin_degC: ${months(12, 9)}\nmax_degC: ${months(12, 5)}\nsource: wmoNormals1991\n`,
    'containers/tooHigh.yaml':
      'name: A drum cut above its own height\ncontainer: { shape: lyingCylinder, diameter_mm: 500, length_mm: 800, depth_mm: 600 }\nsource: fromMemory\nnote: Measure it.\n',
    'pumps/rising.yaml':
      'name: A pump that gains height\ncurve:\n  - { flow_L_h: 0, head_m: 1 }\n  - { flow_L_h: 100, head_m: 2 }\n  - { flow_L_h: 200, head_m: 0 }\npower_W: { low: 5, high: 3 }\nsource: nobody\n',
    'pumps/short.yaml':
      'name: A pump of two points\ncurve:\n  - { flow_L_h: 0, head_m: 1 }\n  - { flow_L_h: 100, head_m: 0 }\npower_W: { low: 3, high: 5 }\nsource: fromMemory\n',
  });
  const told = (file: string) => lines.filter((line) => line.startsWith(`content/${file}`));
  expect(told('climates/shortYear.yaml')).toEqual([
    'content/climates/shortYear.yaml:5:11 min_degC: got 11 entries, expected at least 12. Add some.',
  ]);
  expect(told('climates/upsideDown.yaml')).toHaveLength(12);
  expect(told('containers/tooHigh.yaml')[0]).toContain('the cut edge is at 600 mm');
  expect(told('pumps/rising.yaml').map((line) => /^\S+ (\S+):/.exec(line)?.[1])).toEqual([
    'curve[1].head_m',
    'power_W.high',
    'source',
  ]);
  expect(told('pumps/short.yaml')[0]).toContain('got 2 entries, expected at least 3');
});

test('those that come along have a source each, and no maker’s name is asked for', () => {
  expect(Object.keys(content.climates).length).toBeGreaterThanOrEqual(15);
  expect(Object.keys(content.starts.containers).length).toBeGreaterThanOrEqual(8);
  expect(Object.keys(content.starts.pumps).length).toBeGreaterThanOrEqual(4);
  const cited = [content.climates, content.starts.containers, content.starts.pumps].flatMap((all) =>
    Object.values(all).map(({ source }) => source),
  );
  expect(cited.filter((source) => !Object.hasOwn(content.sources, source))).toEqual([]);
});

test('south of the line the warmest month falls between December and February', () => {
  for (const [id, { latitude, max_degC }] of Object.entries(content.climates)) {
    if (latitude > -30) continue;
    expect([11, 0, 1], id).toContain(max_degC.indexOf(Math.max(...max_degC)));
  }
});
