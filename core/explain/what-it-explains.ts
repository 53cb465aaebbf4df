import type { Why } from '../why.ts';

/** The numbers of a plan that each why stands for, by what it is called. */
const PATHS: Readonly<Record<string, readonly string[]>> = {
  'frame left edge': ['frame.leftMm'],
  'frame bottom edge': ['frame.bottomMm'],
  'batten line up': ['batten.upMm'],
  'batten left end': ['batten.fromLeftMm'],
  'cord rise': [],
  'cord angle': [],
  mass: ['actions.weightN'],
  'cord tension': ['actions.cordN', 'actions.inwardN'],
  'bending of the screw': [],
  cap: [],
  tilt: [],
  lean: [],
  'timber route': [],
  'pull on the board’s screws': [],
  'hole depth': ['fixing.bit.depthMm', 'fixing.pilot.depthMm'],
  'bit diameter': ['fixing.bit.diameterMm'],
  'number of fixings': ['fixing.count'],
  plug: ['fixing.plug.diameterMm', 'fixing.plug.lengthMm'],
  'screw gauge': ['fixing.screw.gauge', 'fixing.screw.diameterMm'],
  'screw diameter': ['fixing.screw.diameterMm', 'fixing.screw.gauge'],
  'screw length': ['fixing.screw.lengthMm'],
  'pilot hole': ['fixing.pilot.diameterMm', 'fixing.bit.diameterMm'],
  utilisation: ['fixing.utilisation'],
  'governing resistance': ['fixing.governing.resistanceN'],
};

const OF_EACH_MARK: Readonly<Record<string, string>> = {
  'load on each mark': 'shearN',
  'outward pull': 'tensionN',
};

const OF_A_MARK: Readonly<Record<string, string>> = {
  across: 'fromLeftMm',
  up: 'upMm',
  'up here': 'upHereMm',
};

/** A plan's whys, each with the paths of the numbers it explains; `marks` are the ids of its marks. */
export function withPaths(whys: readonly Why[], marks: readonly { id: string }[]): Why[] {
  return whys.map((why) => (why.paths ? why : { ...why, paths: pathsOf(why.of, marks) }));
}

function pathsOf(of: string, marks: readonly { id: string }[]): readonly string[] {
  const known = PATHS[of];
  if (known) return known;
  const each = OF_EACH_MARK[of];
  if (each) return marks.map(({ id }) => `actions.perMark.${id}.${each}`);
  const [, id, what = ''] = /^mark (\w+) (.+)$/.exec(of) ?? [];
  const field = OF_A_MARK[what];
  return id !== undefined && field !== undefined ? [`marks.${id}.${field}`] : [];
}
