/** A bed as a row of its places, with a number in each part, and the same in words. */
import { bedMap, type MapPart } from '../../drawing/bedMap.ts';
import { mm } from '../../paper/measures.ts';
import { placesText } from '../../wording/harvest.ts';
import { cropName, cropNumber, season, type TurnoverInput } from '../turnoverSheet.ts';
import { safe, size, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly input: TurnoverInput;
  readonly bed: string;
  readonly places: number;
  readonly parts: readonly MapPart[];
};

const box = { width: safe.width - mm(1), height: mm(7) };
/** Narrower parts have no room for their number; the words under the map still tell them. */
const least = mm(5);

export function BedMapPicture({ input, bed, places, parts }: Props) {
  const map = bedMap(parts, places, { ...box, least });
  const said = alike(parts)
    .map((some) => partText(input, some))
    .join('; ');
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(0.8) }}>
      <div
        data-role="Figure"
        data-alt={season(input, 'months.mapAlt', { bed, parts: said })}
        style={{ display: 'flex', position: 'relative', ...box }}
      >
        <Shapes shapes={map.shapes} width={box.width} height={box.height} />
        {map.numbers.map(({ part, left, width }) => (
          <div style={{ ...inPart, left, width }}>
            <div style={number}>{numberOf(input, parts[part]?.crop ?? null)}</div>
          </div>
        ))}
      </div>
      <div data-role="P" style={line}>
        {season(input, 'months.bedLine', { bed, parts: said })}
      </div>
    </div>
  );
}

/** Letters that stand wider apart together than alone reach a little on: there is room at the end. */
const line = {
  display: 'flex',
  boxSizing: 'border-box',
  width: box.width,
  paddingRight: mm(2),
  fontSize: size.source,
  lineHeight: 1.3,
} as const;

const inPart = {
  display: 'flex',
  position: 'absolute',
  top: 0,
  height: box.height,
  alignItems: 'center',
  justifyContent: 'center',
} as const;
/** White behind it, so that no line runs through a figure. */
const number = {
  display: 'flex',
  backgroundColor: 'white',
  paddingLeft: mm(0.4),
  paddingRight: mm(0.4),
  fontSize: size.note,
  fontWeight: weight.heavy,
  lineHeight: 1.1,
} as const;

/** Parts with the same crop in the same state are told together. */
function alike(parts: readonly MapPart[]): readonly (readonly MapPart[])[] {
  const found = new Map<string, MapPart[]>();
  for (const part of parts) {
    const key = `${part.crop ?? ''} ${part.state}`;
    found.set(key, [...(found.get(key) ?? []), part]);
  }
  return [...found.values()];
}

function partText(input: TurnoverInput, some: readonly MapPart[]): string {
  const { crop = null, state = 'free' } = some[0] ?? {};
  const name = crop === null ? '' : cropName(input, crop);
  return season(input, 'months.part', {
    crop: season(input, `months.parts.${state}`, { crop: name, number: numberOf(input, crop) }),
    places: placesText(some, input.words.catalogue),
  });
}

function numberOf(input: TurnoverInput, crop: string | null): string {
  return crop === null ? '' : cropNumber(input, crop);
}
