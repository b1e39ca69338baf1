/** What is new on a board, picture by picture, for whoever puts it into words. In the flow: access/since, screens -> [news-line]. Pure. */
import type { BoardNews, NewsLine, PictureName } from '../contract/own-time.ts';
import type { BoardView, PictureView } from '../contract/responses.ts';
import { statesOf } from './states.ts';

/** Pictures to which nothing came are left out. @param board As the person sees it. */
export function newsLine(news: BoardNews, board: BoardView): NewsLine {
  const on = (list: readonly { pictureId: string }[], id: string) => {
    return list.filter(({ pictureId }) => pictureId === id).length;
  };
  const pictures = board.pictures.map((picture) => ({
    id: picture.id,
    name: pictureName(picture, board),
    posted: news.pictures.includes(picture.id),
    remarks: on(news.remarks, picture.id),
    answers: on(news.answers, picture.id),
    cards: on(news.cards, picture.id),
  }));
  const any = pictures.filter(
    ({ posted, remarks, answers, cards }) => posted || remarks + answers + cards > 0,
  );
  return { lookedAt: news.lookedAt, pictures: any };
}

function pictureName({ id, caption, kind, painter }: PictureView, board: BoardView): PictureName {
  const state = statesOf(board.pictures, id).findIndex((each) => each.id === id) + 1;
  return { caption, kind, painter: painter.name, mine: painter.id === board.me.id, state };
}
