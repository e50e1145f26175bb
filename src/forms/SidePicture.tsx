/** @jsxImportSource preact */
/** A side of the card, drawn on the page itself, so that an edit redraws no more than what it changes. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Side } from './messages.ts';
import { paint } from './painted.ts';

type PictureProps = {
  readonly side: Side;
  /** What it shows, for those who hear it; null where it is told elsewhere. */
  readonly alt: string | null;
};

export function SidePicture({ side, alt }: PictureProps) {
  const picture = useRef<SVGSVGElement>(null);
  useLayoutEffect(() => {
    if (picture.current) paint(picture.current, side);
  }, [side]);
  const told = alt === null ? { 'aria-hidden': true } : { role: 'img' as const, 'aria-label': alt };
  return <svg ref={picture} viewBox={`0 0 ${side.width_pt} ${side.height_pt}`} {...told} />;
}
