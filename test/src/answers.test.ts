import { appUnderTest } from './app-under-test.ts';
import { answerContract } from './contract/answers.ts';

answerContract(appUnderTest);
