import { mmPerPoint, thousandth } from './measures.ts';
import { outlines } from './outlines.ts';
import type { Page } from './page.ts';
import { parcelOf } from './parcel.ts';
import type { Attachment } from './print.ts';
import type { Type } from './type.ts';
import { escapeXml } from './xml.ts';

/**
 * A page as one SVG document in its real size, on white. Only presentation attributes, so that a page with a strict
 * content security policy shows it too. What it carries stands at its start and at its end, so that one copy survives
 * most damage.
 */
export function toSvg(page: Page, type: Type, carries?: Attachment): string {
  const { definitions, marks } = outlines(page, type);
  const [width, height] = [page.width_pt, page.height_pt];
  const size_mm = (length_pt: number) => `${thousandth(length_pt * mmPerPoint)}mm`;
  const carried = carries ? `<metadata>${parcelOf(carries)}</metadata>` : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" lang="${escapeXml(page.lang)}"`,
    ` width="${size_mm(width)}" height="${size_mm(height)}" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeXml(page.title)}</title>`,
    carried,
    `<defs>${definitions.join('')}</defs>`,
    `<path d="M0 0H${width}V${height}H0Z" fill="#ffffff"/>`,
    `${marks.join('')}${carried}</svg>`,
  ].join('');
}
