/** Rows of a board in the shape in which an archive holds them. In the flow: board archive -> [board-rows]. Pure. */
import { type ArchivedPerson, type ArchivedPicture, BoardPart } from '../core/outward/board-parts.ts';
import type { ArchiveRows } from '../store/archive-rows.ts';

type PictureRow = ArchiveRows['pictures'][number];

/** @param taken The pictures that go along. @throws ZodError for a row that no board should have: a bug. */
export function boardPart(
  { id, title, scenario, createdAt, overAt, consents, asks, homework }: ArchiveRows,
  taken: readonly PictureRow[],
  people: readonly ArchivedPerson[],
): BoardPart {
  const here = new Set(taken.map((picture) => picture.id));
  return BoardPart.parse({
    ...{ id, title, scenario, people },
    createdAt: createdAt.toISOString(),
    overAt: overAt?.toISOString() ?? null,
    pictures: taken.map((picture) => archivedPicture(picture, here)),
    consents: consents.map(({ personId, use, given, at }) => ({
      personId,
      use,
      given,
      at: at.toISOString(),
    })),
    asks: asks.filter(({ pictureId }) => here.has(pictureId)).map(archivedAsk),
    homework: homework
      .filter(({ pictureId }) => here.has(pictureId))
      .map((each) => archivedHomework(each, here)),
  });
}

function archivedPicture(picture: PictureRow, here: ReadonlySet<string>): ArchivedPicture {
  const { renditions, measures: _, boardId: __, originalHash, createdAt, followsId, ...columns } = picture;
  const kind = columns.kind === 'reference' ? 'reference' : 'painting';
  const folder = `pictures/${picture.id}`;
  return {
    ...(columns as Omit<ArchivedPicture, 'original' | 'renditions' | 'createdAt' | 'followsId'>), // parsed by the caller
    kind,
    followsId: followsId !== null && here.has(followsId) ? followsId : null,
    createdAt: createdAt.toISOString(),
    original: { path: `${folder}/original.${ending(columns.originalType)}`, sha256: originalHash },
    renditions: renditions.map(({ pictureId: ___, hash, mediaType, ...copy }) => ({
      ...copy,
      mediaType: mediaType as ArchivedPicture['renditions'][number]['mediaType'], // parsed by the caller
      path: `${folder}/${copy.name}.${ending(mediaType)}`,
      sha256: hash,
    })),
  };
}

function ending(mediaType: string): string {
  return { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' }[mediaType] ?? 'bin';
}

function archivedAsk(ask: ArchiveRows['asks'][number]): BoardPart['asks'][number] {
  const { id: _, boardId: __, askedAt, answeredAt, withdrawnAt, ...said } = ask;
  return {
    ...said,
    askedAt: askedAt.toISOString(),
    answeredAt: answeredAt?.toISOString() ?? null,
    withdrawnAt: withdrawnAt?.toISOString() ?? null,
  };
}

function archivedHomework(
  {
    id: _,
    boardId: __,
    setAt,
    answeredAt,
    closedAt,
    withdrawnAt,
    answerId,
    ...set
  }: ArchiveRows['homework'][number],
  here: ReadonlySet<string>,
): BoardPart['homework'][number] {
  return {
    ...(set as Omit<
      BoardPart['homework'][number],
      'setAt' | 'answeredAt' | 'closedAt' | 'withdrawnAt' | 'answerId'
    >), // parsed by the caller
    answerId: answerId !== null && here.has(answerId) ? answerId : null,
    setAt: setAt.toISOString(),
    answeredAt: answeredAt?.toISOString() ?? null,
    closedAt: closedAt?.toISOString() ?? null,
    withdrawnAt: withdrawnAt?.toISOString() ?? null,
  };
}
