import { Component } from "preact";

/** Whether one has something that the other has not, or has otherwise. @param {any} one @param {any} other */
function lacks(one, other) {
  for (const name in one) if (one[name] !== other[name]) return true;
  return false;
}

/**
 * A view that is gone through again only when one of its props is another: after a keystroke most of a page is as it was.
 * @template P
 * @param {(props: P) => import("preact").ComponentChild} view
 * @returns {import("preact").ComponentClass<P>}
 */
export function whenChanged(view) {
  return class extends Component {
    /** @param {Readonly<P>} next */
    shouldComponentUpdate(next) {
      return lacks(next, this.props) || lacks(this.props, next);
    }

    render() {
      return view(/** @type {P} */ (this.props));
    }
  };
}
