/** The states of one painting, oldest first. In the flow: pictures of a board -> [states] -> queue, askings. Pure. */

interface State {
  id: string;
  follows: string | null;
}

/**
 * The states that belong to the painting of which one picture is a state.
 *
 * @param pictures In the order they were posted. Where two follow one state, both belong to the painting and the one
 *   posted later is the newer. @returns Empty when the picture is not among them.
 */
export function statesOf<Picture extends State>(pictures: readonly Picture[], pictureId: string): Picture[] {
  const byId = new Map(pictures.map((picture) => [picture.id, picture]));
  const firstOf = (picture: Picture): string => {
    const seen = new Set<string>();
    let first = picture;
    while (first.follows !== null && !seen.has(first.id)) {
      seen.add(first.id);
      const before = byId.get(first.follows);
      if (!before) break;
      first = before;
    }
    return first.id;
  };
  const one = byId.get(pictureId);
  if (!one) return [];
  const first = firstOf(one);
  return pictures.filter((picture) => firstOf(picture) === first);
}
