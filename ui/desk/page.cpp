#include "desk/page.h"
