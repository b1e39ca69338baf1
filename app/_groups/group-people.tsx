'use client';
/** The people of a group and its invitations; what is changed is fetched anew with the page. IO: HTTP. */
import { useRouter } from 'next/navigation';
import { type ReactNode, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { deleteGroup } from '#app/_api/people.ts';
import { SchoolForm } from '#app/_decency/school-form.tsx';
import { InvitePart } from '#app/_people/invite-part.tsx';
import { Members } from '#app/_people/members.tsx';
import { OpenInvites } from '#app/_people/open-invites.tsx';
import { wardsAmong } from '#app/_people/roles-on-board.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { GroupView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { words } from '#words/shell.ts';
import styles from './groups.module.css';

interface GroupPeopleProps {
  group: GroupView;
  meId: string;
  /** What else stands there, before the end of it all. */
  children: ReactNode;
}

export function GroupPeople({ group, meId, children }: GroupPeopleProps) {
  const [round, setRound] = useState(0);
  const router = useRouter();
  const at = { groupId: group.id };
  return (
    <>
      <section className={styles.sheet}>
        <h2>{words.people.groups.people}</h2>
        <Members
          at={at}
          people={group.members}
          meId={meId}
          role={group.role}
          here={[]}
          onChanged={() => router.refresh()}
        />
      </section>
      {may(group.role, 'group.invite.make') ? (
        <section className={styles.sheet}>
          <InvitePart
            at={at}
            wards={wardsAmong(group.members)}
            alone={group.school.noPublicLinks}
            onMade={() => setRound((before) => before + 1)}
          />
          <OpenInvites at={at} round={round} />
        </section>
      ) : null}
      {may(group.role, 'group.school') ? <SchoolForm groupId={group.id} rules={group.school} /> : null}
      {children}
      {may(group.role, 'group.delete') ? <DeleteGroup groupId={group.id} /> : null}
    </>
  );
}

/** Asked twice, in place. */
function DeleteGroup({ groupId }: { groupId: string }) {
  const [asked, setAsked] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const remove = async () => {
    try {
      await deleteGroup(groupId);
      location.assign('/');
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  return (
    <div className={styles.acts}>
      {asked ? <span>{words.people.groups.removeSure}</span> : null}
      <Button weight="word" onClick={asked ? remove : () => setAsked(true)}>
        {words.people.groups.remove}
      </Button>
      {asked ? (
        <Button weight="word" onClick={() => setAsked(false)}>
          {words.cancel}
        </Button>
      ) : null}
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </div>
  );
}
