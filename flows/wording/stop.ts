import type { Caution } from '../../core/plan-shape.ts';
import { type Open, planThatStands } from '../open.ts';
import type { DisplayUnit } from '../reading.ts';
import { inUnit } from './in-unit.ts';
import { sentence } from './sentence.ts';

/** Stops of the wall itself, or of who may drill it: the piece can hang or stand without a hole. Our choice. */
const OF_THE_WALL: ReadonlySet<string> = new Set([
  'C-AB-1',
  'C-AB-2',
  'C-SV-4',
  'C-WL-1',
  'C-WL-5',
  'C-GT-1',
  'C-GT-2',
  'C-GT-3',
  'C-WA-1',
]);

const WITHOUT_HOLES =
  'Without a hole: a picture rail that is there already, another wall, or standing it on the floor against the wall.';

/** What would clear a stop, and a way without holes where there is one that the stop does not name itself. */
export function clearLines(stops: readonly Caution[], clear: readonly string[], unit: DisplayUnit): string[] {
  const clears = [...new Set(clear)].map((line) => sentence(inUnit(line, unit))).join(' ');
  const isNamed = stops.some(({ text }) =>
    /\b(?:picture rail|the floor|another wall|other wall)\b/i.test(text),
  );
  return [
    ...(clears === '' ? [] : [`What would clear it: ${clears}`]),
    ...(!isNamed && stops.some(({ id }) => OF_THE_WALL.has(id)) ? [WITHOUT_HOLES] : []),
  ];
}

/** The answer to "what can I do then?" while the job is stopped. */
export function clearText(open: Open): string {
  const plan = planThatStands(open);
  const stops = (plan?.cautions ?? []).filter(({ severity }) => severity === 'stop');
  const lines = clearLines(stops, plan?.clear ?? [], open.folded.unit);
  return lines.join(' ') || 'Nothing clears it as it stands: change the job, and I look again.';
}
