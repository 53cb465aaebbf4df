// @ts-check
/** Everything on the page is made here, as text nodes and attributes: words of a message are never markup. */

/** @typedef {Node | string | null | undefined | false} Child */

/**
 * @param {string} tag
 * @param {Record<string, string>} [attributes]
 * @param {...Child} children
 * @returns {HTMLElement}
 */
export function element(tag, attributes = {}, ...children) {
  return filled(document.createElement(tag), attributes, children);
}

/**
 * @param {string} tag
 * @param {Record<string, string>} [attributes]
 * @param {...Child} children
 * @returns {SVGElement}
 */
export function svgElement(tag, attributes = {}, ...children) {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  return filled(/** @type {SVGElement} */ (made), attributes, children);
}

/**
 * @template {Element} E
 * @param {E} made
 * @param {Record<string, string>} attributes
 * @param {Child[]} children
 * @returns {E}
 */
function filled(made, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  for (const child of children) if (child) made.append(child);
  return made;
}

/**
 * What the page was sent with.
 * @template {HTMLElement} E
 * @param {string} id
 * @param {new () => E} kind
 * @returns {E}
 */
export function found(id, kind) {
  const node = document.getElementById(id);
  if (!(node instanceof kind)) throw new Error(`the page has no ${id}`);
  return node;
}

/** For who listens to the page; not shown. */
export function hidden(/** @type {string} */ text) {
  return element('span', { class: 'hidden' }, text);
}
