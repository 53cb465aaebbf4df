/** Cases of `safety-cases.json` that the tests of cautions and keep-clear zones answer, by id. */
export const answered: readonly string[] = [
  ...['KC-03', 'KC-04', 'KC-05', 'KC-07', 'KC-08', 'KC-R2', 'KC-A1', 'KC-D2', 'KC-D3', 'KC-D4', 'KC-D5'],
  ...['AS-06', 'AS-07', 'AS-08', 'AS-09', 'AS-10', 'AS-11', 'AS-12', 'AS-13'],
  ...['PB-01', 'PB-02', 'PB-03', 'PB-05', 'PB-06', 'PB-07', 'PB-08', 'PB-09'],
  ...['SI-03', 'SI-05', 'NO-01', 'NO-02'],
  ...['MH-01a', 'MH-02a', 'MH-03c', 'MH-03a', 'MH-04a', 'MH-05a', 'MH-06a', 'MH-07a', 'MH-08c', 'MH-08a'],
  ...['MH-09a', 'MH-10c', 'MH-11', 'MH-15', 'NL-02', 'NL-03', 'NL-05', 'NL-07', 'NL-08', 'NL-09', 'LD-02'],
  ...['GL-02', 'FP-02', 'FP-03', 'EQ-01', 'EQ-04', 'BZ-01', 'BZ-02', 'BZ-04', 'BZ-05', 'BZ-06'],
  ...['WA-01', 'WA-02', 'AD-01', 'AD-04', 'AD-05', 'AD-07', 'AD-08', 'AD-10'],
  ...['GT-01', 'GT-02', 'GT-04', 'GT-05', 'WL-01'],
];
