import { appUnderTest } from './app-under-test.ts';
import { messageContract } from './contract/messages.ts';

messageContract(appUnderTest);
