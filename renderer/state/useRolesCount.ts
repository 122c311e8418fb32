import { rolesCount } from "../../app/people/keepers.ts";
import { useList } from "./useList.ts";

/** Whether somebody keeps the records, so that roles count. */
export function useRolesCount(): boolean {
  const operators = useList("operators").rows ?? [];
  return rolesCount(operators.map((one) => ({ ...one, named: one.fullName !== undefined })));
}
