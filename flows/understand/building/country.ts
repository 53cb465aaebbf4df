import type { Country } from '../../../core/job.ts';

const PLACES: [Country, RegExp][] = [
  ['NZ', /\b(?:new zealand|nz|n\.z\.?|aotearoa|auckland|wellington|christchurch|kiwi)\b/],
  [
    'AU',
    /\b(?:australian?|au|nsw|vic(?:toria)?|qld|queensland|tassie|tasmania|new south wales|south australia|western australia|northern territory|sydney|melbourne|brisbane|adelaide|hobart|darwin|canberra|down under|aus|aussie|oz|straya)\b/,
  ],
  [
    'UK',
    /\b(?:uk|u\.k\.?|gb|great britain|britain|british|england|english|scotland|scottish|wales|welsh|northern ireland|united kingdom|london|manchester|glasgow|edinburgh|cardiff|belfast|leeds|liverpool|yorkshire|cornwall)\b/,
  ],
  ['IE', /\b(?:ireland|irish|eire|dublin|cork|galway|republic of ireland)\b/],
  [
    'CA',
    /\b(?:canada|canadian|ontario|quebec|british columbia|alberta|manitoba|saskatchewan|nova scotia|toronto|vancouver|montreal|calgary)\b/,
  ],
  [
    'US',
    /\b(?:us|u\.s\.?(?:a\.?)?|usa|united states|the states|america|american|alabama|alaska|arizona|arkansas|california|colorado|connecticut|delaware|florida|georgia|hawaii|idaho|illinois|indiana|iowa|kansas|kentucky|louisiana|maine|maryland|massachusetts|michigan|minnesota|mississippi|missouri|montana|nebraska|nevada|new (?:hampshire|jersey|mexico|york)|north (?:carolina|dakota)|ohio|oklahoma|oregon|pennsylvania|rhode island|south (?:carolina|dakota)|tennessee|texas|utah|vermont|virginia|washington|wisconsin|wyoming|chicago|boston|seattle)\b/,
  ],
  [
    'EU',
    /\b(?:eu|europe|germany|deutschland|france|spain|espa[nñ]a|italy|netherlands|holland|belgium|austria|portugal|poland|denmark|sweden|finland|greece|hungary|romania|bulgaria|croatia|czech(?:ia)?|slovakia|slovenia|estonia|latvia|lithuania|luxembourg|malta|cyprus|berlin|paris|madrid|rome)\b/,
  ],
];

const ELSEWHERE =
  /\b(?:norway|switzerland|iceland|turkey|india|south africa|singapore|malaysia|hong kong|japan|china|brazil|mexico|argentina|israel|uae|dubai|qatar|kenya|nigeria|egypt|thailand|indonesia|philippines|chile|other|another country|somewhere else|elsewhere|overseas)\b/;

/** Short names that are ordinary words elsewhere: between commas they are the country. */
const SHORT_ALONE = /(?:^|[,;.\n])\s*(?:in |the )*(us|usa|uk|au|aus|oz|nz|eu|gb|ie|ca)\s*(?=$|[,;.\n])/;
const SHORT: Record<string, Country> = {
  us: 'US',
  usa: 'US',
  uk: 'UK',
  gb: 'UK',
  au: 'AU',
  aus: 'AU',
  oz: 'AU',
  nz: 'NZ',
  eu: 'EU',
  ie: 'IE',
  ca: 'CA',
};

/** The country a message names; "us" is a country only when the country was asked, or in a list. */
export function countryIn(text: string, asked: boolean): Country | null {
  const searched = asked
    ? text
    : text.replace(
        /\b(?:us|au|aus|oz|kiwi|eu|gb|cork|vic|perth|washington|maine|rome|paris|other|elsewhere)\b/g,
        ' ',
      );
  const short = SHORT_ALONE.exec(text)?.[1];
  if (short !== undefined) return SHORT[short] ?? null;
  if (/\bnorthern ireland\b/.test(searched)) return 'UK';
  if (/\bnew south wales\b|\bnsw\b/.test(searched)) return 'AU';
  if (asked && /\b(?:sa|wa|nt|act|tas|perth)\b/.test(searched)) return 'AU';
  const place = PLACES.find(([, words]) => words.test(searched));
  if (place !== undefined) return place[0];
  return asked && ELSEWHERE.test(searched) ? 'other' : null;
}

/** In capitals the short names are the country, unless all of it is shouted: "a US house". Or before a house. */
export function inCapitals(said: string): Country | null {
  const shouted = !/\p{Ll}{2}/u.test(said);
  const short =
    (shouted ? null : /\b(USA?|UK|AU|NZ|GB|IE|CA|EU)\b/.exec(said)?.[1]) ??
    /\b(?:an?|old|typical|in|our|my|this) (us|usa|uk|nz|au) (?:house|home|build|flat|apartment|place|wall)\b/i.exec(
      said,
    )?.[1];
  return short === undefined ? null : (SHORT[short.toLowerCase()] ?? null);
}
