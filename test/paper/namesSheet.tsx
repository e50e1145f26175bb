import type { Sheet } from '../../src/paper/layOut.ts';
import { mm, paperSizes, pt } from '../../src/paper/measures.ts';
import { scriptNames } from './scriptNames.ts';

/** A sheet with a name in each script: by itself, with a number, and beside Latin. */
export function namesSheet(names: readonly string[] = scriptNames.map(({ name }) => name)): Sheet {
  const root = (
    <div
      style={{
        ...{ display: 'flex', flexDirection: 'column', width: '100%', padding: mm(15), gap: mm(2) },
        ...{ boxSizing: 'border-box', fontSize: pt(12), lineHeight: 1.5 },
      }}
    >
      {names.map((name) => (
        <div style={{ display: 'flex', gap: mm(4) }}>
          <p style={{ display: 'block', width: mm(70), margin: 0 }}>{name}</p>
          <p style={{ display: 'block', width: mm(90), margin: 0 }}>
            {name.split(' ')[0]} 12 (<b>Tank {name.split(' ')[0]}</b>), 7.5 kg
          </p>
        </div>
      ))}
    </div>
  );
  return { ...paperSizes.A4, title: 'Names', lang: 'en', root };
}
