export { ModelView } from "./model-view.tsx";
