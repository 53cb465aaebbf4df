import { appUnderTest } from './app-under-test.ts';
import { webhookSignatureContract } from './contract/webhook-signature.ts';

webhookSignatureContract(appUnderTest);
