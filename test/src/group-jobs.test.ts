import { appUnderTest } from './app-under-test.ts';
import { groupJobContract } from './contract/group-jobs.ts';

groupJobContract(appUnderTest);
