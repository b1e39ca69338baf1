/** Texts of a page: a plain one, one under a label. In the flow: pages -> [said]. Draws with react-pdf. */
import { Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { INK, LETTERS, QUIET } from './paper.ts';
import { LEADING, type Letter } from './typesetter.ts';

interface SaidProps {
  letter?: Letter;
  quiet?: boolean;
  centred?: boolean;
  children: ReactNode;
}

export function Said({ letter = LETTERS.body, quiet = false, centred = false, children }: SaidProps) {
  return (
    <Text
      style={{
        fontSize: letter.size,
        fontWeight: letter.weight,
        lineHeight: LEADING,
        color: quiet ? QUIET : INK,
        textAlign: centred ? 'center' : 'left',
        flexShrink: 0,
      }}
    >
      {children}
    </Text>
  );
}

export function Labelled({ label, children }: { label: string; children: string }) {
  return (
    <View style={{ marginTop: 7, flexShrink: 0 }}>
      <Said letter={LETTERS.label}>{label}</Said>
      <Said>{children}</Said>
    </View>
  );
}
