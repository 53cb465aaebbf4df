import { SELF } from 'cloudflare:test';
import { expect, test } from 'vitest';
import { ASSET_TYPES } from '../../src/chat/asset-files.ts';
import { appUnderTest } from '../src/app-under-test.ts';
import { answerContract } from '../src/contract/answers.ts';
import { fieldContract } from '../src/contract/fields.ts';
import { groupJobContract } from '../src/contract/group-jobs.ts';
import { jobContract } from '../src/contract/jobs.ts';
import { keyContract } from '../src/contract/keys.ts';
import { localOnlyContract } from '../src/contract/local-only.ts';
import { messageContract } from '../src/contract/messages.ts';
import { sessionContract } from '../src/contract/session.ts';
import { webhookSignatureContract } from '../src/contract/webhook-signature.ts';

// What the doors take and refuse is the same in workerd, whose Request, streams and WebCrypto are its own.
answerContract(appUnderTest);
fieldContract(appUnderTest);
jobContract(appUnderTest);
groupJobContract(appUnderTest);
keyContract(appUnderTest);
localOnlyContract(appUnderTest);
messageContract(appUnderTest);
sessionContract(appUnderTest);
webhookSignatureContract(appUnderTest);

test.each(Object.entries(ASSET_TYPES))('the Worker serves the chat page’s %s as %s', async (file, type) => {
  const response = await SELF.fetch(`http://127.0.0.1/chat/${file}`);
  expect([response.status, response.headers.get('content-type')]).toEqual([200, type]);
  expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
  expect((await response.text()).length).toBeGreaterThan(100);
});
