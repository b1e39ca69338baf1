/** Reads off the code which sentences it says: every `say` template under a folder, as the key of a catalogue. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { keyOf } from '#server/core/say/catalogue.ts';

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

function partsOf(template: ts.TemplateLiteral): string[] {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return [template.text];
  return [template.head.text, ...template.templateSpans.map((span) => span.literal.text)];
}

/** @returns From key to the file that says it. */
export function saidUnder(...folders: string[]): Map<string, string> {
  const said = new Map<string, string>();
  for (const file of folders.flatMap(sourcesIn)) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
    const visit = (node: ts.Node): void => {
      if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'say')
        said.set(keyOf(partsOf(node.template)), file);
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return said;
}

/** Texts that stand in a file as values: not its imports, not the keys of its objects. Gaps are left as a blank. */
export function textsIn(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isPropertyAssignment(node)) {
      visit(node.initializer);
      return;
    }
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text);
    if (ts.isTemplateExpression(node)) texts.push(partsOf(node).join(' '));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}
