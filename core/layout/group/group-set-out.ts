import type { GroupJob } from '../../group-job.ts';
import type { Job, Up } from '../../job.ts';
import type { Assumption, CrossCheck, Frame } from '../../plan-shape.ts';
import type { Why } from '../../why.ts';
import { datumOf } from '../datum.ts';
import { type Fit, offTheWall } from '../fit.ts';
import { lengthText } from '../length-text.ts';
import { measuredFrom, setOut } from '../marks.ts';
import type { Among, DoesNotFit, LayoutResult, SetOut } from '../set-out.ts';
import { aroundOpenings } from './around-openings.ts';
import { betweenPieces } from './between.ts';
import { groupAdvice } from './group-advice.ts';
import { groupFrames, jobOfPiece, upOf } from './group-frames.ts';
import { groupWhys } from './group-why.ts';
import { stretchAcross } from './line.ts';

/** A group on the wall: each piece with its own job and set-out, and what is said of all of them. Millimetres, unrounded. */
export type GroupSetOut = {
  ok: true;
  pieces: { job: Job; layout: SetOut }[];
  box: Frame;
  crossChecks: CrossCheck[];
  advice: string[];
  assumptions: Assumption[];
  why: Why[];
};

/** Why a group can't be set out: for each piece what is in its way, the whole group's reason where it is one. */
export type GroupMisfit = { ok: false; pieces: { job: Job; layout: LayoutResult }[] };

/** Turns several pieces into marks, or into the reasons why they do not fit. Heights are level through mark 1A. */
export function setOutGroup(job: GroupJob): GroupSetOut | GroupMisfit {
  const asked = groupFrames(job);
  if (!asked.ok) return allOf(job, asked);
  const { wall } = job;
  const around = aroundOpenings(job, asked);
  const { frames, box, up, cells } = around.ok ? around.placed : asked;
  const jobs = frames.map((frame, at) => placedJob(job, at, upOf(frame, job, up), frame));
  const first = jobs[0] && setOut(jobs[0], { nth: 1 });
  const level = first?.ok ? first.marks[0] : undefined;
  const firstMarkMm = level?.fromLeftMm ?? box.leftMm;
  const fit: Fit = {
    frame: box,
    wall,
    ...measuredFrom(datumOf(wall), up.group, wall, firstMarkMm),
    firstMarkMm,
  };
  const off = offTheWall(fit, 'group');
  if (off) return allOf(job, off);
  if (!around.ok) return allOf(job, around);

  const pieces = jobs.map((each, at) => {
    const among: Among = { nth: at + 1, ...(at > 0 && level && { level }) };
    return { job: each, layout: at === 0 && first ? first : setOut(each, among) };
  });
  if (!pieces.every(isSetOut)) return { ok: false, pieces };
  const marks = pieces.map((each) => each.layout.marks);
  return {
    ok: true,
    pieces,
    box,
    crossChecks: betweenPieces(cells, frames, marks),
    advice: groupAdvice(job, fit, marks, around.placed),
    assumptions: [...around.assumptions, ...stretchTaken(job), ...alignTaken(job)],
    why: groupWhys(job, around),
  };
}

const isSetOut = (each: { job: Job; layout: LayoutResult }): each is { job: Job; layout: SetOut } =>
  each.layout.ok;

const allOf = (job: GroupJob, layout: DoesNotFit): GroupMisfit => ({
  ok: false,
  pieces: job.pieces.map((piece) => ({ job: jobOfPiece(job, piece), layout })),
});

function placedJob(job: GroupJob, at: number, up: Up, frame: Frame): Job {
  const piece = job.pieces[at] as Job['piece'];
  return {
    ...jobOfPiece(job, piece),
    place: { ...job.place, across: { by: 'left-edge', mm: frame.leftMm }, up },
  };
}

/** A place that is one line says where the stretch begins or ends, and nothing of its other end. */
function stretchTaken({ arrange, place, wall }: GroupJob): Assumption[] {
  if (arrange.spread === undefined || arrange.as === 'column') return [];
  if (place.across.by === 'centre' || place.across.by === 'between') return [];
  const { fromMm, toMm } = stretchAcross(place.across, wall.widthMm);
  return [
    {
      field: 'place.across',
      value: { by: 'between', fromMm, toMm },
      because: `to spread the pieces both ends are needed: from ${lengthText(fromMm)} to ${lengthText(toMm)} from the left end is taken`,
    },
  ];
}

function alignTaken({ arrange }: GroupJob): Assumption[] {
  return arrange.align !== undefined || arrange.as === 'column'
    ? []
    : [
        {
          field: 'arrange.align',
          value: 'centre',
          because: 'nothing was said of how they line up, so their middles are level',
        },
      ];
}
