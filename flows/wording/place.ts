import type { Across, JobSoFar, Up } from '../../core/job.ts';
import type { WallDatum } from '../../core/wall/wall.ts';
import type { DisplayUnit } from '../reading.ts';
import { length } from './length.ts';
import { DATUM, VALUE } from './words.ts';

/** Where the piece goes, in words: "centred", "its bottom 140 mm above the mantel". */
export function placeInWords(part: JobSoFar, unit: DisplayUnit): string[] {
  const { across, up, below } = part.place ?? {};
  const datum = part.wall?.datum;
  return [
    ...(datum && up === undefined && datum.aboveFloorMm === undefined
      ? [`heights from ${DATUM[datum.kind]}`]
      : []),
    ...stairsText(datum, unit),
    ...(across ? [acrossText(across, unit)] : []),
    ...(up?.mm === undefined ? [] : [upText(up, DATUM[part.wall?.datum?.kind ?? 'floor'], unit)]),
    ...(below === undefined ? [] : [VALUE['place.below']?.[below] ?? below]),
  ];
}

/** "stairs that rise 180 mm, going 250 mm, up to the right". */
function stairsText(datum: WallDatum | undefined, unit: DisplayUnit): string[] {
  const { riseMm, goingMm, climbs } = datum ?? {};
  const parts = [
    ...(riseMm === undefined ? [] : [`rise ${length(riseMm, unit)}`]),
    ...(goingMm === undefined ? [] : [`going ${length(goingMm, unit)}`]),
    ...(climbs === undefined ? [] : [`up to the ${climbs}`]),
  ];
  return parts.length === 0 ? [] : [`stairs: ${parts.join(', ')}`];
}

function acrossText(across: Across, unit: DisplayUnit): string {
  switch (across.by) {
    case 'centre':
      return 'centred on the wall';
    case 'left-edge':
      return `its left edge ${length(across.mm, unit)} from the left end`;
    case 'right-edge':
      return `its right edge ${length(across.mm, unit)} from the right end`;
    case 'centre-at':
      return `its middle ${length(across.mm, unit)} from the left end`;
    case 'between':
      return `between ${length(across.fromMm, unit)} and ${length(across.toMm, unit)} from the left end`;
  }
}

function upText(up: Up, datum: string, unit: DisplayUnit): string {
  const height = length(up.mm, unit);
  switch (up.by) {
    case 'bottom-above':
      return `its bottom ${height} above ${datum}`;
    case 'centre-at':
      return `its middle ${height} above ${datum}`;
    case 'top-at':
      return `its top ${height} above ${datum}`;
    case 'below-ceiling':
      return `its top ${height} below the ceiling`;
  }
}
