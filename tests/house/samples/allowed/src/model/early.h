#pragma once

#include "model/kinds.def"
