import { appUnderTest } from './app-under-test.ts';
import { fieldContract } from './contract/fields.ts';

fieldContract(appUnderTest);
