import { Component, type ReactNode } from "react";
import { Key, KeyRow } from "../parts/key.tsx";
import { words } from "../words/words.ts";

interface Props {
  readonly children: ReactNode;
  /** Entries kept here that the server has not named: what the person wants to hear first. */
  readonly kept_n: () => number;
}

/** One screen's stumble never takes the house down; entries are on the disk already. */
export class ScreenBoundary extends Component<Props, { readonly error: Error | undefined }> {
  override state: { readonly error: Error | undefined } = { error: undefined };

  static getDerivedStateFromError(error: Error) {
    return { error };
  }

  override render() {
    const { error } = this.state;
    if (!error) return this.props.children;
    const { shell } = words();
    const report = `${error.name}: ${error.message}\n${error.stack ?? ""}\n${location.hash}\n${navigator.userAgent}`;
    return (
      <main style={{ padding: "var(--s5) var(--s4)", display: "grid", gap: "var(--s4)" }}>
        <h1>{shell.stumbled(this.props.kept_n())}</h1>
        <KeyRow>
          <Key main onPress={() => this.setState({ error: undefined })}>
            {shell.openAgain}
          </Key>
          <Key onPress={() => void navigator.clipboard?.writeText(report)}>{shell.copyReport}</Key>
        </KeyRow>
      </main>
    );
  }
}
