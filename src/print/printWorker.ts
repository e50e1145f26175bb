/** One of several threads that print at the same time: gets a sheet, prints it, says so, gets the next. */
import { parentPort, workerData } from 'node:worker_threads';
import type { Solver } from '../core/turnover/solver.ts';
import { nodePress } from '../paper/node.ts';
import { nodeSolver } from '../solver/node.ts';
import { allSheets } from '../sheets/allSheets.ts';
import { type Order, type PrintAnswer, seasonSheets } from './order.ts';
import { type PrintJob, printSheet } from './printSystem.ts';
import { printTurnover } from './printTurnover.ts';
import { printWorkshop } from './printWorkshop.ts';
import { workshopParts } from '../core/workshop/parts.ts';
import { whyNotPrinted } from './whyNotPrinted.ts';

const job: PrintJob = workerData;
const press = nodePress();
let solver: Promise<Solver> | null = null;

parentPort?.on('message', async (order: Order) => {
  parentPort?.postMessage(await answer(order));
});

async function answer(order: Order): Promise<PrintAnswer> {
  const { of, sheet } = order;
  const told = { file: of.file, sheet, pages: 0, refused: null, leftOut: [] };
  try {
    return { ...told, ...(await printed(order)) };
  } catch (error) {
    return { ...told, refused: whyNotPrinted(error, of.raw, job.words.catalogue) };
  }
}

async function printed(order: Order): Promise<Partial<PrintAnswer>> {
  if (order.sheet === seasonSheets) {
    solver ??= nodeSolver();
    return { pages: await printTurnover(order.of, job, await press, await solver) };
  }
  if ('people' in order.of) {
    const part = workshopParts.find((one) => order.sheet === `workshop-${one}`);
    if (part === undefined) throw new RangeError(`there is no part ${order.sheet}`);
    return printWorkshop(order.of, part, job, await press);
  }
  const kind = allSheets.find(({ id }) => id === order.sheet);
  if (kind === undefined) throw new RangeError(`there is no sheet ${order.sheet}`);
  return { pages: await printSheet(kind, order.of, job, await press) };
}
