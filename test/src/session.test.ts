import { appUnderTest } from './app-under-test.ts';
import { sessionContract } from './contract/session.ts';

sessionContract(appUnderTest);
