import { Component, type ReactNode } from "react";

type Props = { readonly children: ReactNode };
type State = { readonly fault?: unknown };

/** Stands round everything: a fault of the page's is told in words, not by an empty sheet. */
export class Boundary extends Component<Props, State> {
  override state: State = {};

  static getDerivedStateFromError(fault: unknown): State {
    return { fault: fault ?? "nothing" };
  }

  // Another place may be without fault.
  private readonly moveOn = () => this.setState({ fault: undefined });

  override componentDidMount() {
    window.addEventListener("hashchange", this.moveOn);
  }

  override componentWillUnmount() {
    window.removeEventListener("hashchange", this.moveOn);
  }

  override render() {
    const { fault } = this.state;
    if (fault === undefined) return this.props.children;
    return (
      <main className="closed">
        <h1>Latewood made a mistake here</h1>
        <p role="alert">
          This page cannot be shown: {fault instanceof Error ? fault.message : String(fault)}. What
          was kept is safe.
        </p>
        <p className="piece-doings">
          <a href="#/pieces">All pieces</a>
          <button type="button" className="in-line" onClick={() => window.location.reload()}>
            Load the page again
          </button>
        </p>
      </main>
    );
  }
}
