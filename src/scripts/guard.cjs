// Plain CommonJS of long ago: it must run, and speak, on any Node that someone has.
var major = Number(process.versions.node.split('.')[0]);
if (!(major >= 24)) {
  console.error(
    'wallhand needs Node 24, and this is ' +
      process.versions.node +
      '. It normally comes with `npm ci`, as an optional package; run `npm ci` again without --omit=optional, or install Node 24 yourself.',
  );
  process.exit(1);
}
