import { spawnSync } from 'node:child_process';

/** Commit messages are conventional: every one this clone can see since the root, or the last where it is shallow. */
const inClone = spawnSync('git', ['rev-parse', '--is-inside-work-tree'], { encoding: 'utf8' });
if (inClone.status !== 0) {
  console.log('commits: not a git clone, nothing to read');
} else {
  const shallow = spawnSync('git', ['rev-parse', '--is-shallow-repository'], {
    encoding: 'utf8',
  }).stdout.trim();
  const range = shallow === 'true' ? ['--last'] : ['--from', ''];
  const lint = spawnSync('commitlint', range, { encoding: 'utf8' });
  process.stdout.write(lint.stdout);
  process.stderr.write(lint.stderr);
  console.log(`commits: ${lint.status === 0 ? 'conventional' : 'not conventional'}`);
  process.exitCode = lint.status ?? 1;
}
