/** Words about taking things away, bringing them in, and deleting oneself. Pure. */

const plural = (count: number, one: string, many: string) => (count === 1 ? one : `${count} ${many}`);
const no = (count: number) => (count === 0 ? 'no' : String(count));

export const outwardWords = {
  board: {
    titleOf: (board: string) => `Take away from ${board}`,
    lead: 'What stands on this board, as files of your own.',
    back: 'Back to the board',
    figures: 'Figures',
    figuresText:
      'Every figure of every plane with its unit and its interval of doubt. The table opens in any spreadsheet.',
    table: 'Table (CSV)',
    json: 'All of it (JSON)',
    marks: 'Marks',
    marksText:
      'Remarks, lines and samples that you see, as Web Annotations (JSON-LD), a W3C standard that other programs read too.',
    marksOut: 'Marks (JSON-LD)',
    marksIn: 'Bring marks in',
    marksInText:
      'From a file of Web Annotations. They become marks of yours, with the name of who said them first beside them. Nothing that is here is touched.',
    choose: 'Choose a file',
    onto: 'Where marks go whose picture is not on this board',
    ontoNone: 'Do not bring these in',
    bringing: 'Bringing them in …',
    taken: (count: number) =>
      count === 0
        ? 'No mark could be brought in.'
        : `${plural(count, 'One mark was', 'marks were')} brought in.`,
    leftOut: 'Left out',
    passedOver: 'Brought in, but for a part',
    whole: 'The whole board',
    wholeText:
      'One file with pictures, planes, marks, cards and figures, which another Veilstep takes in as it is. People are in it by name alone. Untouched camera files, sessions, addresses and passwords never are.',
    wholeTake: 'Take the board away',
    wholeCount: (count: number) =>
      count === 0 ? 'No picture goes along.' : `${plural(count, 'One picture goes', 'pictures go')} along.`,
    behind: (count: number) =>
      count === 1
        ? 'One picture stays behind, with all that was said on it:'
        : `${count} pictures stay behind, with all that was said on them:`,
    behindHow:
      'A painting goes along once its painter allows both that it is kept and that it is shown to others (with the people of the board, under “What the pictures may be used for”).',
    looking: 'Looking what may go along …',
    pictureBy: (caption: string | null, painter: string) =>
      caption ? `“${caption}” by ${painter}` : `A picture by ${painter}`,
  },
  boards: {
    open: 'Bring a board in from a file',
    text: 'From a file that was taken away from this or another Veilstep. You will own the board; its people come along as names.',
    taking: 'Taking it in …',
    done: (title: string, pictures: number) =>
      `“${title}” is here with ${pictures === 1 ? 'one picture' : `${pictures} pictures`}.`,
    behind: 'These had stayed behind where it was taken away:',
    look: 'Open it',
  },
  person: {
    title: 'Take my data away',
    text: 'One file with everything that is yours: who you are here, your pictures and the camera files you kept, your marks, first impressions, phrases and what you allowed. Pictures as pictures, the rest as text.',
    take: 'Take it away',
    endTitle: 'Delete me',
    endText:
      'For good. Your pictures go with all that was said on them, your remarks, first impressions, phrases, askings and homework go, and so does your name.',
    counts: (pictures: number, remarks: number) =>
      `That is ${pictures === 1 ? 'one picture' : `${no(pictures)} pictures`} and ${remarks === 1 ? 'one remark' : `${no(remarks)} remarks`}.`,
    stays:
      'What others wrote stays, answers to your remarks too, standing alone. Cards and planes bear no name and stay with their board. Sentences in the record of what was done to others keep names for up to 365 days. Files that others took away, and backups of this server, are out of its reach until they are deleted.',
    holds: 'Before that, hand on or delete what you own:',
    confirm: (name: string) => `Write your name, ${name}, to say that you mean it`,
    go: 'Delete me for good',
    going: 'Deleting …',
    look: 'See what would go',
    looking: 'Counting …',
    groupNamed: (name: string) => `the group ${name}`,
    boardNamed: (title: string) => `the board ${title}`,
  },
};
