/** 144 bits: a plan's id is also what opens it, so it can't be guessed. A multiple of three needs no padding. */
const PLAN_ID_BYTES = 18;

/** An unguessable id, base64url. Called inside a request only: Workers refuse randomness at module scope. */
export const newPlanId = (): string =>
  btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(PLAN_ID_BYTES))))
    .replaceAll('+', '-')
    .replaceAll('/', '_');
