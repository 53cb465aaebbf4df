/** A figure as it is read off a tape: "44-5/16" is 44.3125. */
export function figureOf(figure: string): number {
  return figure
    .split(/[ -]/)
    .map((part) => {
      const [top = '0', bottom = '1'] = part.split('/');
      return Number(top) / Number(bottom);
    })
    .reduce((total, each) => total + each, 0);
}
