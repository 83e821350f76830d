/** The words of the view, by what they are for: templates with numbered placeholders. */
export type Words = Readonly<
  Record<
    | 'noPictures'
    | 'compare'
    | 'savePage'
    | 'showSheet'
    | 'showPictures'
    | 'noSize'
    | 'pageValues'
    | 'pageOf'
    | 'asPrinted'
    | 'printsOther'
    | 'notTyped'
    | 'notPrinted'
    | 'noSheetTitle'
    | 'noSheet'
    | 'pdfUnread'
    | 'pdfUndrawn'
    | 'pageUndrawn'
    | 'notLoaded'
    | 'previousPage'
    | 'nextPage'
    | 'field'
    | 'typed'
    | 'onTheSheet'
    | 'where'
    | 'page'
    | 'same'
    | 'differs'
    | 'notFound'
    | 'notInTheRecord',
    string
  >
>

const words = JSON.parse(document.getElementById('content')!.dataset.words!) as Words

/** A sentence of the view, in the language of the editor. */
export const said = (name: keyof Words, ...values: readonly unknown[]): string =>
  words[name].replace(/\{(\d+)\}/g, (_, i: string) => String(values[Number(i)] ?? ''))
