#pragma once

// What many files of the window include, parsed once a build. No file may rely on it.

#include "core/precompiled.h"

#include <QAction>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QWidget>
