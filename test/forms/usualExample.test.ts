import { expect, test } from 'vitest';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import { usualExample } from '../../src/forms/class/usualExample.ts';
import { content } from '../demoSystems.ts';

test('a class is offered an example first that shows all that any worksheet asks for', () => {
  const id = usualExample(content.systems);
  const system = content.systems.find((one) => one.id === id)?.system;
  if (system === undefined) throw new Error(`no system ${id}`);
  const { asked } = handoutFacts(system, 'adults');
  for (const key of ['fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned', 'turnover'])
    expect(asked.map((one) => one.key)).toContain(key);
  expect(asked.flatMap(({ steps }) => steps).every(({ byHand }) => byHand === 'yes')).toBe(true);
  expect(usualExample([])).toBe('');
});
