/** Every kind of sheet, in the order in which a keeper needs them. */
import { buildSheet } from './buildSheet.tsx';
import { careCardKind } from './careCard.tsx';
import { careCardLarge } from './careCardLarge.tsx';
import { dipStrip } from './dipStrip.tsx';
import { labels } from './labels.tsx';
import { planningWorksheet } from './planningWorksheet.tsx';
import { plantingTemplate } from './plantingTemplate.tsx';
import { pocketCard } from './pocketCard.tsx';
import type { SheetKind } from './sheetKind.ts';
import { sittersSheet } from './sittersSheet.tsx';
import { stageSheet } from './stageSheet.tsx';
import { startUpLog } from './startUpLog.tsx';
import { systemDrawing } from './systemDrawing.tsx';
import { wallPosters } from './wallPoster.tsx';
import { waterLog } from './waterLog.tsx';

export const allSheets: readonly SheetKind[] = [
  careCardKind,
  careCardLarge,
  pocketCard,
  planningWorksheet,
  systemDrawing,
  buildSheet,
  startUpLog,
  waterLog,
  dipStrip,
  sittersSheet,
  labels,
  plantingTemplate,
  stageSheet,
  ...wallPosters,
];
