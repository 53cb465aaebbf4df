/** Keeps what there is to say. */
export function phrases(all: readonly (string | false)[]): string[] {
  return all.filter((each): each is string => each !== false && each !== '');
}
