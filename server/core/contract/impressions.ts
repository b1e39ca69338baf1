/** What the server answers about first impressions; handlers and screens share it. Types only. */
import type { PersonView } from './responses.ts';

/** What somebody saw first in a painting, once it is revealed. */
export interface ImpressionView {
  person: PersonView;
  text: string;
}
