/** Stamped on every conversation's cache. Raise it when the machine, the questions or the cache change shape. */
export const FLOW_VERSION = '3';
