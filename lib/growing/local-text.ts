/** A text of the default tables in both languages of the product. A network may reword its own copy. */
export type LocalText = { readonly en: string; readonly es: string };
