/** A document, or the honest lack of one. */
export type Source = { readonly title: string; readonly issuer: string };
