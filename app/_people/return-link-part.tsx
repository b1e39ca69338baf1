'use client';
/** For a host: a link by which somebody who lost their way in comes back as themselves. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { makeReturnLink } from '#app/_api/people.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { PersonView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import { MadeLink } from './made-link.tsx';

export function ReturnLinkPart({ person }: { person: PersonView }) {
  const [url, setUrl] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const make = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      setUrl((await makeReturnLink(person.id)).url);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  if (url !== null) {
    return <MadeLink url={url} label={words.account.linkFor(person.name)} hint={words.account.linkHint} />;
  }
  return (
    <>
      <Button
        weight="word"
        busy={busy}
        busyWord={words.account.makingLink}
        onClick={make}
        aria-label={words.account.linkTo(person.name)}
      >
        {words.account.makeLink}
      </Button>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </>
  );
}
