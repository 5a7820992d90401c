#!/usr/bin/env -S python3 -B
"""core keeps no state outside its values: no mutable variable at file scope or in a static, no instance()."""

import re
import sys

import tree

FIXED = r"(?:const|constexpr|consteval|constinit\s+const)\b"
NAME_AND_VALUE = r"[\w:<>,*&\s]*[\w>*&]\s+\**&?\w+(?:\[\w*\])?\s*(?:;|=[^=]|\{)"
EXTERN = re.compile(rf'^\s*extern\s+(?!"C"|template\b|{FIXED})')
INSTANCE = re.compile(r"\binstance\s*\(\s*\)")
STATIC = re.compile(rf"^\s*(?:inline\s+|thread_local\s+)*(?:static|thread_local)\s+"
                    rf"(?!(?:inline\s+|thread_local\s+)*{FIXED})(?=[\w:]){NAME_AND_VALUE}")
# clang-format leaves what stands at file scope in the first column.
NOT_A_VARIABLE = r"using|namespace|typedef|return|struct|class|enum|union|template|concept|friend|public|private|protected|static|extern|case|default|static_assert|else|requires"
FILE_SCOPE = re.compile(rf"^(?!(?:inline\s+)?{FIXED})(?!(?:inline\s+)?(?:{NOT_A_VARIABLE})\b)(?=[\w:]){NAME_AND_VALUE}")


def problems(root):
    for path in tree.files(root):
        if not tree.is_code(path) or not tree.under(path, "core"):
            continue
        for number, line in tree.lines(root, path):
            code = line.split("//")[0].rstrip()
            if EXTERN.match(code):
                yield f"{path}:{number}: a variable declared extern; pass it as an argument"
            elif STATIC.match(code):
                yield f"{path}:{number}: a static that can change; make it const or pass it as an argument"
            elif FILE_SCOPE.match(code):
                yield f"{path}:{number}: a variable of the whole file that can change; make it const or pass it"
            if INSTANCE.search(code):
                yield f"{path}:{number}: a single instance(); pass the object as an argument"


if __name__ == "__main__":
    sys.exit(tree.report("no globals", list(problems(tree.root_from_arguments()))))
