import { appUnderTest } from './app-under-test.ts';
import { localOnlyContract } from './contract/local-only.ts';

localOnlyContract(appUnderTest);
