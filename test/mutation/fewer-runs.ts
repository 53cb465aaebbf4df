import fc from 'fast-check';

/** A law that needs more than this to catch a change is no guard of it; a suite that names its own number keeps it. */
fc.configureGlobal({ numRuns: 30 });
