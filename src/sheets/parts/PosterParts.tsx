/** What the wall poster is put together from. */
import type { JSXNode } from 'satori/jsx';
import {
  fishPicture,
  plantPicture,
  stonesPicture,
  storyBox,
  wastePicture,
} from '../../drawing/storyPictures.ts';
import { mm } from '../../paper/measures.ts';
import type { Limit, story, Told } from '../posterWords.ts';
import { weight } from './look.ts';
import { posterRule, posterSize } from './posterLook.ts';
import { Shapes } from './Shapes.tsx';

export function PosterHeading({ text }: { text: string }) {
  return (
    <div
      data-role="H2"
      style={{
        display: 'flex',
        fontSize: posterSize.heading,
        fontWeight: weight.heavy,
        lineHeight: 1.2,
        borderBottom: `${posterRule.thin}px solid black`,
        marginBottom: mm(2),
      }}
    >
      {text}
    </div>
  );
}

/** A line for whoever stands near. */
export function Near({ text, heavy }: { text: string; heavy?: 'heavy' }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        fontSize: posterSize.near,
        fontWeight: heavy ? weight.heavy : weight.text,
        lineHeight: 1.2,
      }}
    >
      {text}
    </div>
  );
}

/** A line for whoever stands two metres away. */
export function Far({ text, as = 'P' }: { text: string; as?: 'P' | 'H2' }) {
  return (
    <div
      data-role={as}
      style={{
        display: 'flex',
        fontSize: posterSize.main,
        fontWeight: as === 'H2' ? weight.heavy : weight.text,
        lineHeight: 1.1,
      }}
    >
      {text}
    </div>
  );
}

/** A station: the number that stands in the drawing, its word, and what it does. */
export function Station({ number, told, width }: { number: string; told: Told; width: number }) {
  return (
    <div data-role="LI" style={{ display: 'flex', width, marginBottom: mm(2) }}>
      <div data-role="Lbl" style={{ ...disc, marginTop: mm(1.5), marginRight: mm(3) }}>
        {number}
      </div>
      <div data-role="LBody" style={{ display: 'flex', flexDirection: 'column', flex: 1 }}>
        <Far text={told.word} />
        <Near text={told.why} />
      </div>
    </div>
  );
}

const discSize = mm(17);
const disc = {
  display: 'flex',
  flexShrink: 0,
  width: discSize,
  height: discSize,
  borderRadius: discSize / 2,
  boxSizing: 'border-box',
  border: `${posterRule.ring}px solid black`,
  alignItems: 'center',
  justifyContent: 'center',
  fontSize: mm(13),
  fontWeight: weight.heavy,
  lineHeight: 1,
} as const;

export function LimitBox({ limit }: { limit: Limit }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        borderTop: `${posterRule.thin}px solid black`,
        paddingTop: mm(2),
      }}
    >
      <Near text={limit.head} heavy="heavy" />
      {limit.number === '' ? null : (
        <div
          data-role="P"
          style={{
            display: 'flex',
            alignItems: 'flex-end',
            fontSize: posterSize.figure,
            lineHeight: 1.05,
          }}
        >
          <div style={{ display: 'flex' }}>{limit.number}</div>
          <div style={{ display: 'flex', fontSize: posterSize.sign, lineHeight: 1.5 }}>
            {limit.sign === '' ? '' : `\u00a0${limit.sign}`}
          </div>
        </div>
      )}
      <Near text={limit.under} />
    </div>
  );
}

const pictures = {
  fish: fishPicture,
  waste: wastePicture,
  stones: stonesPicture,
  plants: plantPicture,
};

type StoryStep = ReturnType<typeof story>[number];

export function StoryBox({ step, width, more }: { step: StoryStep; width: number; more: 'yes' | 'no' }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width }}>
      <div
        data-role="Artifact"
        style={{ display: 'flex', position: 'relative', width, height: storyBox.height }}
      >
        <Shapes shapes={pictures[step.key]()} {...storyBox} />
        {more === 'yes' ? <Arrow left={storyBox.width + mm(16)} /> : null}
      </div>
      <Far text={step.word} />
      <Near text={step.why} />
    </div>
  );
}

/** On to the next step. */
function Arrow({ left }: { left: number }) {
  const [width, height] = [mm(28), mm(14)];
  const d = 'M4 55L200 55L200 10L276 70L200 130L200 85L4 85Z';
  return (
    <div style={{ display: 'flex', position: 'absolute', left, top: mm(5), width, height }}>
      <Shapes shapes={[{ d, paint: { stroke: 'black', width: 8 } }]} width={width} height={height} />
    </div>
  );
}

export function PosterBox({ children }: { children: JSXNode }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        border: `${posterRule.box}px solid black`,
        padding: `${mm(3)}px ${mm(6)}px`,
        rowGap: mm(2),
      }}
    >
      {children}
    </div>
  );
}
