/**
 * One line a request. The route's pattern and not the address: an address may carry a plan's id or a signed
 * link. No header, no body, no words of a message.
 */
export type LogLine = {
  at: string;
  method: string;
  route: string;
  status: number;
  ms: number;
  crew?: string;
  problem?: boolean;
  /** On a fault: the kind of error and where it was thrown, never its data. */
  fault?: string;
};
