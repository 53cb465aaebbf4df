import type { Context } from 'hono';
import type { CrewOf, Handled } from '../../crew-face.ts';
import type { DoorEnv } from '../../doors.ts';
import { jsonBody } from '../../http/json-body.ts';
import { problem } from '../../http/problem.ts';
import { messageSchema } from '../../schema/message.ts';
import { crewMessage } from './message.ts';
import { idOf } from './message-id.ts';

/** The neutral chat webhook (contract, section 3): one message in, the crew's answer out, byte for byte. */
export async function neutralDoor(c: Context<DoorEnv>, crewOf: CrewOf): Promise<Response> {
  const said = await jsonBody(c, messageSchema);
  if (said instanceof Response) return said;
  const { crew, signedId } = c.get('admitted');
  const id = idOf(signedId, said.id, c.req.header('idempotency-key'));
  if (id === null) return noId();
  return answered(await crewOf(crew).handle(crewMessage(id, said)));
}

function answered(handled: Handled): Response {
  if (handled.ok) return new Response(handled.body, { headers: { 'content-type': 'application/json' } });
  return problem(handled.why === 'erased' ? 'erased' : 'conflict', handled.detail);
}

function noId(): Response {
  const expected = 'text of 1 to 200 characters, here or in the Idempotency-Key header';
  return problem('bad-field', `id: ${expected}.`, {
    errors: [{ path: 'id', expected, example: 'evt-0193' }],
  });
}
