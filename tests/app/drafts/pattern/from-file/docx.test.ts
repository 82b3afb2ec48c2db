import { strToU8, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { textOfDocx } from '../../../../../src/app/drafts/pattern/from-file/docx.ts';

const file = (body: string, name = 'word/document.xml') => {
  const xml = `<?xml version="1.0" encoding="UTF-8"?><w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>${body}<w:sectPr><w:pgSz w:w="11906"/></w:sectPr></w:body></w:document>`;
  return zipSync({ [name]: strToU8(xml), 'word/styles.xml': strToU8('<w:t>not this</w:t>') }).slice().buffer;
};
const p = (...runs: readonly string[]) => `<w:p><w:pPr><w:jc w:val="left"/></w:pPr>${runs.join('')}</w:p>`;
const t = (text: string) => `<w:r><w:rPr><w:b/></w:rPr><w:t xml:space="preserve">${text}</w:t></w:r>`;

it('a word processor’s file is read paragraph by paragraph, by the elements of ECMA-376', () => {
  const body = [
    p(t('BACK')),
    p(t('Cast on 80 '), t('sts &amp; work in k2, p2&#8211;rib.')),
    p(t('Row 1:'), '<w:r><w:tab/></w:r>', t('k.'), '<w:r><w:br/></w:r>', t('Row 2: p.')),
    '<w:p><w:pPr><w:numPr><w:ilvl w:val="0"/></w:numPr></w:pPr><w:r><w:t>Bind off.</w:t></w:r></w:p>',
    p(
      '<w:del><w:r><w:delText>taken out</w:delText></w:r></w:del>',
      '<w:ins><w:r><w:t>put in</w:t></w:r></w:ins>',
    ),
    `<w:tbl>${[
      ['Size', 'S', 'M'],
      ['Chest', '88', '96'],
    ]
      .map((row) => `<w:tr>${row.map((cell) => `<w:tc>${p(t(cell))}</w:tc>`).join('')}</w:tr>`)
      .join('')}</w:tbl>`,
    '<w:p/>',
    '<w:p/>',
    '<w:p/>',
    p(t('Weave in the ends.')),
  ].join('');
  expect(textOfDocx(file(body))).toEqual({
    ok: true,
    value:
      'BACK\nCast on 80 sts & work in k2, p2–rib.\nRow 1: k.\nRow 2: p.\n• Bind off.\nput in\nSize S M\nChest 88 96\n\nWeave in the ends.',
  });
});

it('what is no such file is told', () => {
  for (const data of [new ArrayBuffer(40), file(p(t('x')), 'other.xml')])
    expect(textOfDocx(data)).toMatchObject({ ok: false, faults: [{ code: 'document damaged' }] });
});
