/** The big tank of Hollow Lane as somebody types it from a note in the hand, field by field. */
import type { Page } from 'playwright-core';

export const ibcTyped: Readonly<Record<string, string>> = {
  name: 'The big tank',
  place: 'Hollow Lane Growers, Quillbeck',
  'tank-container-length_mm': '1000',
  'tank-container-width_mm': '1000',
  'tank-container-depth_mm': '780',
  'tank-full_mm': '700',
  'beds-0-name': 'Top bed',
  'beds-0-container-length_mm': '1000',
  'beds-0-container-width_mm': '1000',
  'beds-0-container-depth_mm': '360',
  'beds-0-mediaDepth_mm': '330',
  'beds-0-waterLine_mm': '300',
  'beds-0-standpipeBore_mm': '40',
  'beds-0-above_mm': '900',
  'pump-flow_L_h': '900',
  'pump-intake_mm': '150',
  'fish-present': '12',
  'fish-massNow_g': '180',
  spoon_g: '4.5',
  'water-now_degC': '26',
  'water-pH': '6,8',
};

export async function typeIbc(page: Page): Promise<void> {
  await page.selectOption('#field-beds-0-media', 'coarseGravel');
  await page.selectOption('#field-fish-kind', 'nileTilapia');
  for (const [field, text] of Object.entries(ibcTyped)) {
    await page.locator(`#field-${field}`).pressSequentially(text);
  }
}
