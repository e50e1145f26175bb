/** What the care routine may say to whom, and that it never says other than the card on the tank. */
import { describe, expect, test } from 'vitest';
import type { CareTask } from '../../src/core/care/routine.ts';
import { say } from '../../src/wording/catalogue.ts';
import { content, english } from '../demoSystems.ts';

const tasks = content.care;

function task(id: string): CareTask {
  const found = tasks.find((one) => one.id === id);
  if (found === undefined) throw new Error(`there is no task ${id} in content/care`);
  return found;
}

function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.!?])\s+/);
}

/** What only somebody who knows may do; and what must not be read here by a child. */
const notForAnyone =
  /\bsalt|medicine|\bpH\b|\bdos(e|es|ing)\b|ammonia|chlorin|bleach|copper|chang(e|ing) (the )?water|\bplug|unplug|switch|clean a bed|\bkill/i;

/** Orders of a sitter or a child that are not told as "never". */
function tooMuch(of: readonly CareTask[]): readonly string[] {
  return of
    .filter((one) => one.who === 'anyone')
    .flatMap((one) => sentencesOf(one.do))
    .filter((sentence) => notForAnyone.test(sentence) && !/^never\b|without touching/i.test(sentence));
}

describe('a task', () => {
  test('has a source that is there', () => {
    const lost = tasks.filter(({ source }) => !Object.hasOwn(content.sources, source));
    expect(lost.map(({ id }) => id)).toEqual([]);
    expect(tasks.length).toBeGreaterThan(70);
  });

  test('is short: an order of a few sentences, a reason of one', () => {
    expect(tasks.filter((one) => one.do.length > 320).map(({ id }) => id)).toEqual([]);
    expect(tasks.filter((one) => sentencesOf(one.why).length !== 1).map(({ id }) => id)).toEqual([]);
    for (const one of tasks) for (const text of [one.do, one.why]) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  test('that names a metric figure names the US one too', () => {
    const figure = /(\d)\s?(°C|L|kg|cm|m)\b(?! \()/;
    const alone = tasks.flatMap(({ id, do: order, why }) =>
      figure.test(order.replaceAll('mg/L', '')) || /\d °C(?! \()/.test(why) ? [id] : [],
    );
    expect(alone).toEqual([]);
  });

  test('says each thing once', () => {
    const orders = tasks.map((one) => one.do);
    expect(orders.filter((order, i) => orders.indexOf(order) !== i)).toEqual([]);
  });
});

describe('what anyone may do', () => {
  test('never holds salt, medicine, a dose, plugs or a water change, unless as what not to do', () => {
    expect(tooMuch(tasks)).toEqual([]);
    expect(tasks.filter((one) => one.who === 'anyone').length).toBeGreaterThan(15);
  });

  test('and this rule finds what it looks for', () => {
    const [first] = tasks;
    if (first === undefined) throw new Error('there are no tasks');
    const says = (order: string) => tooMuch([{ ...first, who: 'anyone', do: order }]);
    expect(says('Look. Add a pinch of salt.')).toEqual(['Add a pinch of salt.']);
    expect(says('Pull the plug.')).toHaveLength(1);
    expect(says('Never add salt. Never touch a plug.')).toEqual([]);
    expect(tooMuch([{ ...first, who: 'keeper', do: 'Add salt.' }])).toEqual([]);
  });

  test('is nowhere to start water, to kill a fish or to treat one', () => {
    const keepers = ['startUp', 'harvest', 'sickFish', 'emergencies', 'standstill', 'newFish', 'materials'];
    expect(tasks.filter((one) => one.who === 'anyone' && keepers.includes(one.topic))).toEqual([]);
  });

  test('chemicals, wiring and cutting are for adults, killing for the trained', () => {
    expect(
      ['chemicalsByAdults', 'doseByPlan', 'cleanPump', 'cutPower', 'smoothEdges'].map((id) => task(id).who),
    ).toEqual(Array.from({ length: 5 }, () => 'adult'));
    expect(task('killHumanely').who).toBe('trained');
  });
});

/** The words of a sentence of the card that carry its meaning. */
function wordsOf(key: string): readonly string[] {
  const sentence = say(english, `card.${key}`, { limit: '', range: '' });
  return sentence.toLowerCase().match(/[a-z]{2,}/g) ?? [];
}

/** Words that join others, and the call for the keeper, who is the one that is called. */
const joints = new Set(['or', 'to', 'the', 'an', 'it', 'call', 'where', 'there', 'is', 'one']);

function missing(key: string, id: string): readonly string[] {
  const order = task(id).do.toLowerCase();
  return wordsOf(key).filter((word) => !joints.has(word) && !order.includes(word));
}

describe('beside the card', () => {
  test.each([
    ['day.topUpDraining', 'topUpDraining'],
    ['day.topUpStill', 'topUpStill'],
    ['feedNever', 'feedByCard'],
    ['week.solids', 'shakeSponge'],
    ['week.barrel', 'refillBarrel'],
    ['week.pick', 'pickWholePlants'],
    ['look.leads', 'lookAtLeads'],
    ['look.legs', 'lookAtLegs'],
    ['look.baskets', 'lookAtLegs'],
    ['look.screen', 'lookAtScreens'],
    ['case.levelAct', 'findLeak'],
    ['case.gaspingAct', 'afterGasping'],
    ['case.powerAct', 'whilePowerIsOut'],
    ['case.deadAct', 'afterOneDeath'],
    ['never', 'sitterNever'],
    ['never', 'pourNothingIn'],
  ])('what it says under %s, the task %s says too', (key, id) => {
    const lost = missing(key, id).filter((word) => !(id === 'pourNothingIn' && /^(never|add)$/.test(word)));
    expect(lost).toEqual([]);
  });

  test('a pH may move as far in a day as the card says', () => {
    const [, perDay] = /at most ([\d.]+) a day/.exec(say(english, 'card.keeper.pHAct')) ?? [];
    expect(task('testAlkalinity').do).toContain(`by ${perDay} a day at most`);
  });

  test('emergencies come in its order, and the first thing is never to pour, feed, dose or start', () => {
    const order = tasks.filter((one) => one.topic === 'emergencies').map(({ id }) => id);
    const card = ['cutPower', 'findLeak', 'afterGasping', 'whilePowerIsOut', 'afterOneDeath'];
    expect(order.filter((id) => card.includes(id))).toEqual(card);
    const firstStep = (one: CareTask): string => one.do.split(/[:.,]/).at(one.do.includes(':') ? 1 : 0) ?? '';
    const worse = /^\s*(pour|feed|dose|add|start|change|restart)\b/i;
    const urgent = tasks.filter((one) => ['emergencies', 'standstill', 'sickFish'].includes(one.topic));
    expect(urgent.filter((one) => worse.test(firstStep(one))).map(({ id }) => id)).toEqual([]);
  });

  test('a tingle is for an adult, from a dry place, before everything else', () => {
    expect(task('cutPower').do).toMatch(/touch nothing wet, and cut the power from a dry place/);
    expect(say(english, 'card.wrongFirst')).toContain(
      'touch nothing wet; an adult cuts the power from a dry place',
    );
  });
});
