/** Somebody's initials in a circle, faded while they are away. */
import { Monogram } from '#app/_ui/monogram.tsx';
import type { MemberView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';

export function Face({ person, here }: { person: MemberView; here: boolean }) {
  const role = words.people.role[person.role];
  return (
    <Monogram
      name={person.name}
      guide={person.role === 'teacher' || person.role === 'host'}
      away={!here}
      title={here ? words.people.here(person.name, role) : words.people.away(person.name, role)}
    />
  );
}
