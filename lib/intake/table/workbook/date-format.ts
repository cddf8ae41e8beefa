/** Formats of dates and times that have a number and no pattern (ECMA-376 part 1, 18.8.30, those of East Asian locales too). */
const builtIn = [
  [14, 22],
  [27, 36],
  [45, 47],
  [50, 58],
] as const;

const token = /^(s{1,2}|m{1,5}|h{1,2}|am|pm|a|aaa|aaaa|aaaaa|d{1,4}|y{1,4}|b{1,4}|e{1,4}|g{1,3})$/;

/** Whether one part of a pattern writes days or times: it has signs of them and of nothing else. */
function writesDates(pattern: string): boolean {
  const bare = pattern
    .toLowerCase()
    // Words of the pattern, signs written as they are, room for a sign, and signs that fill the cell.
    .replace(/"[^"]*"/g, ' ')
    .replace(/\\./g, ' ')
    .replace(/[_*]./g, ' ')
    // Parts of seconds; hours beyond 24.
    .replace(/s[.,]0+/g, 's')
    .replace(/\[([smhd]{1,2})\]/g, '$1')
    // Colours, conditions and locales.
    .replace(/\[[^\]]*\]/g, '');
  const tokens = bare.split(/[^a-z0#?%]+/).filter((one) => one !== '');
  return tokens.length > 0 && tokens.every((one) => token.test(one));
}

/** Whether cells of a number format hold days or times. A pattern has up to four parts, for signs of numbers and texts. */
export function isDateFormat(id: number, pattern: string | undefined): boolean {
  if (builtIn.some(([from, to]) => id >= from && id <= to)) return true;
  return (pattern ?? '').split(';').some(writesDates);
}
