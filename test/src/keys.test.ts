import { appUnderTest } from './app-under-test.ts';
import { keyContract } from './contract/keys.ts';

keyContract(appUnderTest);
