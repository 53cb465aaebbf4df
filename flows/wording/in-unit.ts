import { mm } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';
import { figure, length } from './length.ts';

const MILLIMETRES = /(\d+(?:\.\d+)?) mm\b/g;
/** In the steps a figure at the tape stands bare: "1025 from the left end, 1020 up from the floor". */
const AT_THE_TAPE = /(\d+(?:\.\d+)?) (?=(?:from the (?:left|right)|up from|down from)\b)/g;

/** Words of `core`, which are in millimetres, in the person's unit. */
export function inUnit(text: string, unit: DisplayUnit): string {
  if (unit === 'mm') return text;
  return text.replace(MILLIMETRES, (_, value: string) => length(mm(Number(value)), unit));
}

/** A step that measures, in the person's unit; bits and screws stay in the millimetres they are sold in. */
export function stepInUnit(step: string, unit: DisplayUnit): string {
  if (unit === 'mm' || !/^(?:Tape on|Mark|Check)\b/.test(step)) return step;
  const said = step.replace(AT_THE_TAPE, (_, value: string) => `${figure(mm(Number(value)), unit)} ${unit} `);
  return inUnit(said.replace(/, within (\d+)\.?$/, ', within $1 millimetres.'), unit);
}
