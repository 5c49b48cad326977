import { Component } from "preact";

/**
 * A view that is gone through again only when one of its props is another: for what is large and seldom changes.
 * @template P
 * @param {(props: P) => import("preact").ComponentChild} view
 * @returns {import("preact").ComponentClass<P>}
 */
export function whenChanged(view) {
  return class extends Component {
    /** @param {Readonly<P>} next */
    shouldComponentUpdate(next) {
      const names = /** @type {(keyof P)[]} */ (Object.keys({ ...this.props, ...next }));
      return names.some((name) => next[name] !== /** @type {P} */ (this.props)[name]);
    }

    render() {
      return view(/** @type {P} */ (this.props));
    }
  };
}
