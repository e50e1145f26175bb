import { describe, expect, test } from 'vitest';
import {
  careFlags,
  careFor,
  careHands,
  careParts,
  careRhythms,
  careTopics,
} from '../../src/core/care/routine.ts';
import { careLines } from '../../src/terminal/careLines.ts';
import { careHeading, handName, onlyWords } from '../../src/wording/care.ts';
import type { Catalogue } from '../../src/wording/catalogue.ts';
import { content, demoSystem, english } from '../demoSystems.ts';

describe('the words round the care routine', () => {
  test('are there for every heading, hand and flag, and none waits for nothing', () => {
    const sentences: Catalogue = english;
    const care = sentences['care'];
    if (typeof care !== 'object') throw new Error('content/wording/en.yaml has no care');
    const keysOf = (group: string): string[] => Object.keys(care[group] ?? {});
    expect(Object.keys(care).sort()).toEqual(['flags', 'only', 'rhythms', 'topics', 'who']);
    expect(keysOf('topics').sort()).toEqual(careTopics.filter((one) => one !== 'routine').sort());
    expect(keysOf('rhythms').sort()).toEqual(careRhythms.filter((one) => one !== 'event').sort());
    expect(keysOf('who').sort()).toEqual([...careHands].sort());
    expect(keysOf('flags').sort()).toEqual([...careFlags].sort());
  });

  test('head every part with a name of its own', () => {
    const headings = careParts(content.care).map((part) => careHeading(part, english));
    expect(headings[0]).toBe('Every day');
    expect(new Set(headings).size).toBe(headings.length);
  });

  test('say who does it and for which systems', () => {
    expect(handName('adult', english)).toBe('An adult');
    expect(onlyWords([], english)).toBe('');
    expect(onlyWords(['fish', 'pumped'], english)).toBe('Only with fish, with a pump.');
  });
});

describe('the care of one system in the terminal', () => {
  const lines = careLines(careFor(demoSystem('drum-corner').system, content.care), english);

  test('tells a part a topic, in each what to do and then why, with its source', () => {
    const at = lines.indexOf('Every week');
    expect(lines[at - 1]).toBe('');
    expect(lines[at + 1]).toMatch(/^ {4}Anyone: Twice a week, shake the inlet sponge/);
    expect(lines[at + 2]).toMatch(/^ {8}Caught solids .* \[commonPractice\]$/);
  });

  test('leaves out what this system has not', () => {
    expect(lines.join('\n')).toMatch(/siphon/);
    expect(lines.join('\n')).not.toMatch(/constant flood|Harvesting fish|timer shows/);
  });

  test('is nothing where no task fits', () => {
    expect(careLines([], english)).toEqual([]);
  });
});
