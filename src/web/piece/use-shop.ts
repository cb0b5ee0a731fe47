import { useEffect, useRef, useState } from "react";
import type { Shop } from "../../shop/index.ts";
import { api, patiently, RETRY_MS, type Said, saidBy } from "../api/index.ts";

export type ShopRead = {
  readonly shop: Shop | undefined;
  /** why it is not read yet */
  readonly waiting: readonly Said[];
  /** why it cannot be read at all */
  readonly closed: readonly Said[];
  /** tries again at once */
  readonly retry: () => void;
};

const unread = { shop: undefined, waiting: [], closed: [] };

/** The shop's file, asked for until the server answers. */
export function useShop(): ShopRead {
  const [read, setRead] = useState<Omit<ShopRead, "retry">>(unread);
  const go = useRef<() => void>(undefined);
  useEffect(() => {
    let isOpen = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const show = (news: Omit<ShopRead, "retry">) => isOpen && setRead(news);
    const waitOut = (waiting: readonly Said[]) => {
      show({ ...unread, waiting });
      return new Promise<void>((settle) => {
        go.current = settle;
        // Once the screen is left, nobody is asked any more.
        if (isOpen) timer = setTimeout(settle, RETRY_MS);
      });
    };
    patiently(api.shop, waitOut).then(
      (shop) => show({ ...unread, shop }),
      (fault) => show({ ...unread, closed: saidBy(fault) }),
    );
    return () => {
      isOpen = false;
      clearTimeout(timer);
    };
  }, []);
  return { ...read, retry: () => go.current?.() };
}
