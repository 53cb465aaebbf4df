import { appUnderTest } from './app-under-test.ts';
import { jobContract } from './contract/jobs.ts';

jobContract(appUnderTest);
